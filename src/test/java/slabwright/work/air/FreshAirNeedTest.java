package slabwright.work.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.work.step.AirEffect;
import slabwright.work.step.CoatNumber;
import slabwright.work.step.StepType;

/** Air for 50 m² four metres high, one part in three mixing, by the worst of two steps. */
class FreshAirNeedTest {
  private static final AirVolume SPACE = new AirVolume(50, 4);
  private static final double RATE = Solvent.ACETONE.vapour(4e5, 20) / 30;

  private static final FreshAirNeed NEED =
      FreshAirNeed.of(List.of(step(60, 30, 4e5), step(60, 60, 4e5)), SPACE, 3, 20);

  private static VapourStep step(double minutes, double fastest, double mm3) {
    return new VapourStep(
        StepType.coat("hall", new CoatNumber(1, 1), new AirEffect.Vapour("dye", 1)),
        slabwright.work.Said.text("step"),
        0,
        minutes,
        fastest,
        List.of(new VapourStep.Liquid(Solvent.ACETONE, mm3)));
  }

  private static void is(double found, double right) {
    assertThat(found).isCloseTo(right, within(right * 1e-12));
  }

  @Test
  void fire_asks_for_a_quarter_of_the_lower_explosive_limit_at_the_fastest_laying() {
    is(NEED.fire(), RATE * 3 / (0.25 * 0.025));
    is(NEED.layerFire(), 4 * NEED.fire());
  }

  @Test
  void health_asks_for_the_strictest_eight_hour_limit() {
    is(NEED.health(), RATE * 3 / 250e-6);
    is(NEED.layerHealth(), 4 * NEED.health());
  }

  /** 1 cfm to the square foot is a foot a minute, 0.3048 m. */
  @Test
  void the_floor_asks_for_a_foot_of_air_a_minute() {
    is(NEED.byFloor(), 50 * 0.3048);
  }

  @Test
  void all_of_it_asks_for_the_largest() {
    is(NEED.largest(), NEED.layerHealth());
    assertThat(FreshAirNeed.of(List.of(step(60, 60, 1)), SPACE, 1, 20).largest())
        .isCloseTo(50 * 0.3048, within(1e-9));
    assertThat(new FreshAirNeed(1, 1, 2, 9, 4).largest()).isEqualTo(9);
  }
}
