package slabwright.work.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import slabwright.work.Said;
import slabwright.work.step.AirEffect;
import slabwright.work.step.CoatNumber;
import slabwright.work.step.StepType;

class AirProperties {
  private static final StepType COAT =
      StepType.coat("hall", new CoatNumber(1, 1), new AirEffect.Vapour("dye", 1));

  @Property(tries = 200)
  void more_air_never_raises_a_concentration(
      @ForAll @Size(min = 1, max = 4) List<@IntRange(min = 1, max = 200) Integer> minutes,
      @ForAll @DoubleRange(min = 0, max = 200) double less,
      @ForAll @DoubleRange(min = 0, max = 200) double more) {
    AirFigures a = figures(minutes, less);
    AirFigures b = figures(minutes, less + more);
    assertThat(b.peakLel()).isLessThanOrEqualTo(a.peakLel() * (1 + 1e-12));
    for (double t = 0; t < 600; t += 37) {
      assertThat(b.lel().at(t)).isLessThanOrEqualTo(a.lel().at(t) * (1 + 1e-9) + 1e-15);
    }
    for (int i = 0; i < a.limits().size(); i++) {
      assertThat(b.limits().get(i).reached())
          .isLessThanOrEqualTo(a.limits().get(i).reached() * (1 + 1e-6));
    }
  }

  @Property(tries = 200)
  void a_figure_is_never_capped(@ForAll @DoubleRange(min = 1, max = 1e6) double times) {
    VapourStep one = step("a", 0, 30, 1e6);
    VapourStep many = step("a", 0, 30, 1e6 * times);
    AirVolume room = new AirVolume(40, 3);
    double single = AirFigures.of(List.of(one), room, 0, 1, 20).peakLel();
    AirFigures big = AirFigures.of(List.of(many), room, 0, 1, 20);
    assertThat(big.peakLel() / single).isCloseTo(times, within(times * 1e-9));
    assertThat(big.layerPeakLel()).isCloseTo(3 * big.peakLel(), within(big.peakLel() * 1e-9));
  }

  @Property(tries = 200)
  void the_worst_mean_of_a_stretch_lies_between_the_mean_from_the_start_and_the_peak(
      @ForAll @Size(min = 1, max = 4) List<@IntRange(min = 1, max = 200) Integer> minutes,
      @ForAll @DoubleRange(min = 0, max = 50) double air) {
    ConcentrationCurve c = figures(minutes, air).lel();
    double worst = c.worstAverage(15);
    assertThat(worst).isLessThanOrEqualTo(c.peak().share() * (1 + 1e-9));
    for (double t = -14; t < 900; t += 1.7) {
      assertThat(worst).isGreaterThanOrEqualTo(c.average(t, t + 15) * (1 - 1e-6));
    }
  }

  @Property(tries = 200)
  void with_the_air_that_fire_needs_the_mean_stays_at_a_quarter_of_the_limit(
      @ForAll @IntRange(min = 1, max = 1000) int minutes,
      @ForAll @DoubleRange(min = 1, max = 10) double mixing) {
    List<VapourStep> steps = List.of(step("a", 0, minutes, 5e6));
    AirVolume room = new AirVolume(100, 4);
    double need = FreshAirNeed.of(steps, room, mixing, 20).fire();
    AirScreening a = AirScreening.of(steps, room, Optional.of(need), mixing, 20);
    assertThat(a.stated().orElseThrow().peakLel()).isLessThanOrEqualTo(0.25 * (1 + 1e-9));
  }

  @Property(tries = 200)
  void a_step_clears_no_sooner_than_the_curve_itself_falls(
      @ForAll @Size(min = 1, max = 4) List<@IntRange(min = 1, max = 200) Integer> minutes,
      @ForAll @DoubleRange(min = 1, max = 50) double air) {
    AirFigures f = figures(minutes, air);
    StepAirFigures last = f.steps().get(f.steps().size() - 1);
    assertThat(f.steps()).allMatch(s -> s.peakLel() <= f.peakLel() * (1 + 1e-12));
    if (last.toHealth() instanceof ClearingTime.After after) {
      double then = last.from() + last.minutes() + after.minutes();
      double lelAtLimit = last.peakLel() / last.health();
      assertThat(f.lel().at(then)).isLessThanOrEqualTo(lelAtLimit * (1 + 1e-9));
      assertThat(((ClearingTime.After) last.layerToHealth()).minutes())
          .isGreaterThan(after.minutes());
    }
  }

  private static AirFigures figures(List<Integer> minutes, double air) {
    List<VapourStep> steps = new ArrayList<>();
    double at = 0;
    for (int m : minutes) {
      steps.add(step("s" + steps.size(), at, m, m * 3e4));
      at += m * 1.5;
    }
    return AirFigures.of(steps, new AirVolume(80, 3.5), air, 3, 20);
  }

  private static VapourStep step(String name, double from, double minutes, double mm3) {
    return new VapourStep(
        COAT, Said.text(name), from, minutes, List.of(new VapourStep.Liquid(Solvent.ACETONE, mm3)));
  }
}
