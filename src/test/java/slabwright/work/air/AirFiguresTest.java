package slabwright.work.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.units.Message;
import slabwright.work.Said;
import slabwright.work.step.AirEffect;
import slabwright.work.step.CoatNumber;
import slabwright.work.step.StepType;

/**
 * What the air of a room of 50 m² by 4 m gets to, against the room equation {@code C = G / Q' (1 −
 * e^(−Q' t / V))} written out here: 20 m³/min of which half mixes.
 */
class AirFiguresTest {
  private static final AirVolume ROOM = new AirVolume(50, 4);
  private static final double V = 200;
  private static final double FRESH = 10;
  private static final double MM3 = 4e5;

  /** Made up, for a second one beside acetone. */
  private static final Solvent OTHER =
      Solvent.fromDataSheet("other", 0.9, 90, 0.02, 10, 100, Optional.of(150.0));

  private static VapourStep step(
      String name, double from, double fastest, VapourStep.Liquid... liquids) {
    return new VapourStep(
        StepType.coat("hall", new CoatNumber(1, 1), new AirEffect.Vapour("dye", 1)),
        Said.text(name),
        from,
        60,
        fastest,
        List.of(liquids));
  }

  private static VapourStep.Liquid acetone() {
    return new VapourStep.Liquid(Solvent.ACETONE, MM3);
  }

  private static AirFigures figures(double airflow, double mixing, VapourStep... steps) {
    return AirFigures.of(List.of(steps), ROOM, airflow, mixing, 20);
  }

  private static double peak(Solvent s, double minutes) {
    return s.vapour(MM3, 20) / minutes / FRESH * (1 - Math.exp(-FRESH / V * minutes));
  }

  @Test
  void air_that_half_mixes_is_half_the_air() {
    AirFigures half = figures(20, 2, step("dye", 0, 60, acetone()));
    assertThat(half.peakLel()).isCloseTo(peak(Solvent.ACETONE, 60) / 0.025, within(1e-9));
    assertThat(half.layerPeakLel()).isCloseTo(4 * half.peakLel(), within(1e-12));
    assertThat(half.peakLel()).isEqualTo(figures(10, 1, step("dye", 0, 60, acetone())).peakLel());
  }

  @Test
  void the_step_that_makes_the_peak_is_named_though_the_peak_is_at_its_very_end() {
    VapourStep small = step("thin coat", 300, 60, new VapourStep.Liquid(Solvent.ACETONE, MM3 / 10));
    assertThat(named(figures(20, 2, step("dye", 0, 60, acetone()), small))).isEqualTo("dye");
    assertThat(named(figures(20, 2, step("dye", 100, 60, acetone()), small))).isEqualTo("dye");
  }

  private static String named(AirFigures figures) {
    return Said.of(figures.peakStep());
  }

  /** Fifteen minutes and the peak of the laying in 30 minutes, eight hours of that in an hour. */
  @Test
  void short_limits_are_of_the_fastest_laying_and_those_of_a_shift_of_the_usual_one() {
    AirFigures fast = figures(20, 2, step("dye", 0, 30, acetone()));
    AirFigures usual = figures(20, 2, step("dye", 0, 60, acetone()));
    assertThat(reached(fast, Solvent.ACETONE, "work.solvent.idlh"))
        .isCloseTo(peak(Solvent.ACETONE, 30), within(1e-12));
    assertThat(reached(fast, Solvent.ACETONE, "work.solvent.acgih-stel"))
        .isGreaterThan(1.3 * reached(usual, Solvent.ACETONE, "work.solvent.acgih-stel"));
    assertThat(reached(fast, Solvent.ACETONE, "work.solvent.osha-pel"))
        .isEqualTo(reached(usual, Solvent.ACETONE, "work.solvent.osha-pel"))
        .isCloseTo(shift(Solvent.ACETONE), within(1e-9));
  }

  /** All the vapour leaves with the air within the eight hours but for e^(−21) of it. */
  private static double shift(Solvent s) {
    double t = 60;
    double end = s.vapour(MM3, 20) / t / FRESH * (1 - Math.exp(-FRESH / V * t));
    double left = V * end * Math.exp(-FRESH / V * (480 - t));
    return (s.vapour(MM3, 20) - left) / FRESH / 480;
  }

  private static double reached(AirFigures figures, Solvent s, String limit) {
    return figures.limits().stream()
        .filter(l -> l.solvent().equals(s) && l.limit().name().equals(Message.of(limit)))
        .findFirst()
        .orElseThrow()
        .reached();
  }

  @Test
  void each_solvent_is_held_against_its_own_limits_and_together_they_add_up() {
    VapourStep both = step("dye", 0, 30, acetone(), new VapourStep.Liquid(OTHER, MM3));
    AirFigures figures = figures(20, 2, both);
    assertThat(figures.limits()).hasSize(7);
    assertThat(reached(figures, Solvent.ACETONE, "work.solvent.idlh"))
        .isCloseTo(peak(Solvent.ACETONE, 30), within(1e-12));
    assertThat(reached(figures, OTHER, "work.solvent.eight-hours"))
        .isCloseTo(shift(OTHER), within(1e-9));
    assertThat(figures.peakLel())
        .isCloseTo(peak(Solvent.ACETONE, 30) / 0.025 + peak(OTHER, 30) / 0.02, within(1e-9));
    assertThat(figures.together())
        .isCloseTo(shift(Solvent.ACETONE) / 250e-6 + shift(OTHER) / 100e-6, within(1e-6));
    assertThat(figures.layerTogether()).isCloseTo(4 * figures.together(), within(1e-9));
  }
}
