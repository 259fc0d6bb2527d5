package slabwright.work.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import slabwright.work.step.AirEffect;
import slabwright.work.step.CoatNumber;
import slabwright.work.step.StepType;

/**
 * The careful reading's figures, each worked out from the room equation by hand: 200 m³ four metres
 * high, 20 m³/min of which half mixes, so 0.05 changes a minute and all vapour in a quarter.
 */
class LowestMetreFiguresTest {
  private static final double MM3 = 4e5;
  private static final double CHANGES = 0.05;
  private static final double FRESH = 10;
  private static final double LAYER = 4;
  private static final double SHIFT = 480;
  private static final double EIGHT_HOURS = 250e-6;
  private static final double QUARTER = 500e-6;
  private static final double DANGER = 2500e-6;
  private static final double LEL = 0.025;
  private static final double VAPOUR = Solvent.ACETONE.vapour(MM3, 20);

  private static final Optional<BreathingProtection> NONE = Optional.empty();
  private static final LowestMetre AIR = new LowestMetre(new AirVolume(50, 4), 20, 2, 20);
  private static final LowestMetre CLOSED = new LowestMetre(new AirVolume(50, 4), 0, 2, 20);

  /** Laid in an hour, at the fastest in half of it. */
  private static final VapourStep STEP =
      new VapourStep(
          StepType.coat("hall", new CoatNumber(1, 1), new AirEffect.Vapour("dye", 1)),
          slabwright.work.Said.text("step"),
          0,
          60,
          30,
          List.of(new VapourStep.Liquid(Solvent.ACETONE, MM3)));

  private static Optional<BreathingProtection> mask(double factor) {
    return Optional.of(new BreathingProtection("mask, vapour", factor));
  }

  private static AirLevel ppm(double parts) {
    return AirLevel.of(Solvent.ACETONE, parts * 1e-6);
  }

  private static Offset<Double> near(double value) {
    return within(Math.abs(value) * 2e-9);
  }

  private static void is(double found, double right) {
    assertThat(found).isCloseTo(right, near(right));
  }

  /** What one laying in an hour makes its crew breathe, minutes × share, in the lowest metre. */
  private static double breathed(double minutes) {
    double rate = VAPOUR / 60;
    double integral = rate / FRESH * (minutes - (1 - Math.exp(-CHANGES * minutes)) / CHANGES);
    return integral * LAYER;
  }

  @Test
  void the_peak_is_that_of_the_fastest_laying_with_all_vapour_in_the_lowest_metre() {
    double peak = VAPOUR / 30 / FRESH * (1 - Math.exp(-CHANGES * 30)) * LAYER;
    AirLevel added = AIR.added(STEP);
    is(added.lel(), peak / LEL);
    is(added.shortTerm(), peak / QUARTER);
    is(added.eightHour(), peak / EIGHT_HOURS);
    is(added.danger(), peak / DANGER);
  }

  @Test
  void in_a_closed_room_the_peak_is_all_of_its_vapour_in_the_lowest_metre() {
    is(CLOSED.added(STEP).lel(), VAPOUR / 200 * LAYER / LEL);
    assertThat(CLOSED.isAired()).isFalse();
    assertThat(AIR.isAired()).isTrue();
  }

  @Test
  void a_level_falls_by_e_in_twenty_minutes() {
    is(AIR.after(ppm(1000), 20).eightHour(), 4 / Math.E);
    is(CLOSED.after(ppm(1000), 20).eightHour(), 4);
  }

  @Test
  void a_shift_s_average_counts_what_lay_in_the_air_and_what_is_laid_over_its_whole_time() {
    double left = 4 * (1 - Math.exp(-CHANGES * 60)) / CHANGES;
    is(AIR.shift(ppm(1000), Optional.empty(), 60), left / SHIFT);
    is(AIR.shift(AirLevel.CLEAN, Optional.of(STEP), 60), breathed(60) / EIGHT_HOURS / SHIFT);
    is(AIR.shift(ppm(1000), Optional.of(STEP), 60), (left + breathed(60) / EIGHT_HOURS) / SHIFT);
  }

  @Test
  void people_wait_until_what_is_left_and_what_they_add_stay_under_the_limit_that_is_met_first() {
    double quarter = Math.log(4) / CHANGES;
    assertThat(AIR.minutesUntil(ppm(2000), AirLevel.CLEAN, NONE).orElseThrow())
        .isCloseTo(quarter, within(1e-6));
    double eighth = Math.log(8) / CHANGES;
    assertThat(AIR.minutesUntil(ppm(2000), ppm(250), NONE).orElseThrow())
        .isCloseTo(eighth, within(1e-6));
    double masked = Math.log(2) / CHANGES;
    assertThat(AIR.minutesUntil(ppm(2000), ppm(250), mask(5)).orElseThrow())
        .isCloseTo(masked, within(1e-6));
    double danger = Math.log(2) / CHANGES;
    assertThat(AIR.minutesUntil(ppm(4000), ppm(500), mask(50)).orElseThrow())
        .isCloseTo(danger, within(1e-6));
  }

  @Test
  void people_enter_at_once_below_the_limit_and_never_when_what_they_add_reaches_it() {
    assertThat(AIR.minutesUntil(ppm(400), ppm(99), NONE)).hasValue(0);
    assertThat(AIR.minutesUntil(ppm(400), ppm(100), NONE).orElseThrow()).isPositive();
    assertThat(AIR.minutesUntil(AirLevel.CLEAN, ppm(499), NONE)).hasValue(0);
    assertThat(AIR.minutesUntil(AirLevel.CLEAN, ppm(500), NONE)).isEmpty();
    assertThat(AIR.minutesUntil(ppm(400), ppm(600), NONE)).isEmpty();
    assertThat(CLOSED.minutesUntil(ppm(400), AirLevel.CLEAN, NONE)).hasValue(0);
    assertThat(CLOSED.minutesUntil(ppm(600), AirLevel.CLEAN, NONE)).isEmpty();
  }

  /** The steady mean of the fastest laying, in the lowest metre. */
  private static double steady() {
    return VAPOUR / 30 / FRESH * LAYER;
  }

  @Test
  void the_speed_that_the_air_bears_is_that_of_the_strictest_limit() {
    is(AIR.bearableSpeed(STEP, NONE, 480), EIGHT_HOURS / steady());
    is(AIR.bearableSpeed(STEP, NONE, 240), EIGHT_HOURS / steady());
    is(AIR.bearableSpeed(STEP, mask(5), 480), 5 * EIGHT_HOURS / steady());
    is(AIR.bearableSpeed(STEP, mask(50), 480), DANGER / steady());
    assertThat(CLOSED.bearableSpeed(STEP, NONE, 480)).isZero();
  }

  @Test
  void a_day_longer_than_a_shift_bears_less() {
    is(AIR.bearableSpeed(STEP, NONE, 600), EIGHT_HOURS * 480 / 600 / steady());
  }

  @Test
  void a_share_is_laid_as_often_as_its_average_goes_into_a_shift() {
    double share = 0.25;
    double once = breathed(60 * share) / EIGHT_HOURS / SHIFT;
    assertThat(AIR.sharesPerShift(STEP, share, NONE)).isEqualTo((int) Math.floor(1 / once));
    assertThat(AIR.sharesPerShift(STEP, share, mask(10)))
        .isEqualTo((int) Math.floor(10 / once))
        .isGreaterThan(AIR.sharesPerShift(STEP, share, NONE));
    assertThat(AIR.sharesPerShift(STEP, 1e-4, NONE)).isEqualTo(1000);
  }

  @Test
  void a_step_that_clean_air_bears_whole_is_laid_in_one_go_and_needs_next_to_no_fan() {
    VapourStep drop =
        new VapourStep(
            STEP.type(),
            STEP.name(),
            0,
            60,
            30,
            List.of(new VapourStep.Liquid(Solvent.ACETONE, 100)));
    assertThat(AIR.bearableShare(drop, NONE)).isEqualTo(1);
    assertThat(CLOSED.airNeeded(drop, NONE).orElseThrow()).isLessThan(1e-9);
    assertThat(AIR.bearableShare(STEP, NONE)).isLessThan(1);
  }

  @Test
  void what_no_fan_clears_has_no_answer() {
    VapourStep flood =
        new VapourStep(
            STEP.type(),
            STEP.name(),
            0,
            60,
            30,
            List.of(new VapourStep.Liquid(Solvent.ACETONE, 1e15)));
    assertThat(CLOSED.airNeeded(flood, NONE)).isEmpty();
  }

  /** The dye whose peak, laid whole at this air, is just the 15-minute limit. */
  private static VapourStep justBorne(double share) {
    double peak = QUARTER * 30 * FRESH / (LAYER * (1 - Math.exp(-CHANGES * 30 * share)));
    double mm3 = MM3 * peak / VAPOUR;
    return new VapourStep(
        STEP.type(), STEP.name(), 0, 60, 30, List.of(new VapourStep.Liquid(Solvent.ACETONE, mm3)));
  }

  @Test
  void the_air_that_is_asked_for_is_what_brings_the_peak_down_to_the_limit() {
    VapourStep step = justBorne(1);
    assertThat(CLOSED.airNeeded(step, NONE).orElseThrow()).isCloseTo(20, within(1e-6));
    assertThat(AIR.airNeeded(step, NONE).orElseThrow()).isCloseTo(20, within(1e-6));
  }

  @Test
  void the_share_that_is_borne_is_what_stays_below_the_limit_while_it_is_laid() {
    assertThat(AIR.bearableShare(justBorne(0.5), NONE)).isCloseTo(0.5, within(1e-9));
    assertThat(AIR.bearableShare(justBorne(0.2), NONE)).isCloseTo(0.2, within(1e-9));
  }

  @Test
  void the_speed_that_is_borne_is_never_rounded_over_the_limit() {
    assertThat(AIR.bearableSpeed(STEP, NONE, 480)).isLessThan(EIGHT_HOURS / steady());
    assertThat(AIR.bearableSpeed(STEP, mask(50), 480)).isLessThan(DANGER / steady());
  }

  @Test
  void a_share_that_goes_into_a_shift_a_whole_number_of_times_is_laid_so_often() {
    double share = 0.25;
    double once = breathed(60 * share) / EIGHT_HOURS / SHIFT;
    int often = (int) Math.ceil(1 / once) + 3;
    assertThat(AIR.sharesPerShift(STEP, share, mask(often * once))).isEqualTo(often);
    assertThat(AIR.sharesPerShift(STEP, share, mask((often - 0.001) * once))).isEqualTo(often - 1);
  }
}
