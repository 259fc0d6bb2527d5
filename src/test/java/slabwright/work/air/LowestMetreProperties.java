package slabwright.work.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import slabwright.work.step.AirEffect;
import slabwright.work.step.CoatNumber;
import slabwright.work.step.StepType;

class LowestMetreProperties {
  private static final StepType COAT =
      StepType.coat("hall", new CoatNumber(1, 1), new AirEffect.Vapour("dye", 1));
  private static final AirVolume ROOM = new AirVolume(80, 3.5);
  private static final Optional<BreathingProtection> NONE = Optional.empty();

  @Property(tries = 300)
  void a_faster_rate_never_lowers_the_peak_nor_the_level_at_any_moment(
      @ForAll @Size(min = 1, max = 5) List<@IntRange(min = 2, max = 300) Integer> minutes,
      @ForAll @DoubleRange(min = 0, max = 60) double air,
      @ForAll @DoubleRange(min = 0.05, max = 1) double quick,
      @ForAll @DoubleRange(min = 0.05, max = 1) double quicker) {
    AirFigures slow = AirFigures.of(steps(minutes, Math.max(quick, quicker)), ROOM, air, 2, 20);
    AirFigures fast = AirFigures.of(steps(minutes, Math.min(quick, quicker)), ROOM, air, 2, 20);
    assertThat(fast.layerPeakLel()).isGreaterThanOrEqualTo(slow.layerPeakLel() * (1 - 1e-12));
    for (double t = 0; t < 1500; t += 23) {
      assertThat(fast.lel().at(t)).isGreaterThanOrEqualTo(slow.lel().at(t) * (1 - 1e-9) - 1e-15);
    }
  }

  @Property(tries = 200)
  void no_laying_that_keeps_to_the_step_s_time_and_the_fastest_rate_is_above_the_figure(
      @ForAll @IntRange(min = 10, max = 200) int minutes,
      @ForAll @DoubleRange(min = 0.1, max = 1) double quick,
      @ForAll @DoubleRange(min = 0, max = 1) double late,
      @ForAll @DoubleRange(min = 0, max = 60) double air) {
    VapourStep bound = step(0, minutes, quick);
    double begin = late * (minutes - bound.fastest());
    VapourStep real = step(begin, bound.fastest(), 1, minutes);
    AirFigures careful = AirFigures.of(List.of(bound), ROOM, air, 1, 20);
    AirFigures laid = AirFigures.of(List.of(real), ROOM, air, 1, 20);
    for (double t = 0; t < 600; t += 7) {
      assertThat(laid.lel().at(t)).isLessThanOrEqualTo(careful.lel().at(t) * (1 + 1e-9) + 1e-15);
    }
  }

  @Property(tries = 200)
  void laid_at_the_speed_that_the_air_bears_a_step_of_a_shift_is_not_held(
      @ForAll @DoubleRange(min = 1, max = 100) double air,
      @ForAll @DoubleRange(min = 1, max = 4) double mixing,
      @ForAll @IntRange(min = 5, max = 480) int minutes,
      @ForAll boolean masked) {
    LowestMetre low = new LowestMetre(ROOM, air, mixing, 20);
    VapourStep fast = step(0, minutes, 0.5);
    Optional<BreathingProtection> worn =
        masked ? Optional.of(new BreathingProtection("mask, vapour", 10)) : NONE;
    double speed = low.bearableSpeed(fast, worn, 480);
    double slowly = fast.fastest() / speed;
    double part = Math.min(1, 480 / slowly);
    double mm3 = fast.liquids().get(0).mm3() * part;
    VapourStep slow = laying(0, slowly * part, slowly * part, mm3);
    assertThat(low.limit(slow, worn)).isEmpty();
  }

  @Property(tries = 200)
  void the_air_said_to_be_needed_frees_the_step_and_a_little_less_does_not(
      @ForAll @IntRange(min = 5, max = 480) int minutes,
      @ForAll @DoubleRange(min = 1, max = 4) double mixing) {
    VapourStep step = step(0, minutes, 0.5);
    LowestMetre still = new LowestMetre(ROOM, 0, mixing, 20);
    double need = still.airNeeded(step, NONE).orElseThrow();
    assertThat(new LowestMetre(ROOM, need * 1.0001, mixing, 20).limit(step, NONE)).isEmpty();
    assertThat(new LowestMetre(ROOM, need * 0.999, mixing, 20).limit(step, NONE)).isPresent();
  }

  @Property(tries = 200)
  void the_section_that_may_be_laid_in_one_go_is_not_held_and_a_larger_one_is(
      @ForAll @IntRange(min = 60, max = 480) int minutes,
      @ForAll @DoubleRange(min = 0.5, max = 30) double air) {
    LowestMetre low = new LowestMetre(ROOM, air, 1, 20);
    VapourStep step = step(0, minutes, 0.5);
    double share = low.bearableShare(step, NONE);
    assertThat(share).isBetween(0.0, 1.0);
    assertThat(low.limit(section(step, share * 0.999), NONE)).isEmpty();
    if (share < 0.99) {
      assertThat(low.limit(section(step, share * 1.01), NONE)).isPresent();
    }
  }

  @Property(tries = 200)
  void after_the_wait_what_is_left_and_what_is_added_let_people_in(
      @ForAll @DoubleRange(min = 0, max = 20) double left,
      @ForAll @DoubleRange(min = 0, max = 0.99) double adding,
      @ForAll @DoubleRange(min = 0.5, max = 60) double air) {
    LowestMetre low = new LowestMetre(ROOM, air, 1, 20);
    AirLevel before = AirLevel.of(Solvent.ACETONE, left * 500e-6);
    AirLevel more = AirLevel.of(Solvent.ACETONE, adding * 500e-6);
    double wait = low.minutesUntil(before, more, NONE).orElseThrow();
    AirLevel then = low.after(before, wait).plus(more);
    assertThat(EntryRule.limit(then, 0, NONE)).isEmpty();
    if (wait > 1) {
      AirLevel sooner = low.after(before, wait * 0.99).plus(more);
      assertThat(EntryRule.limit(sooner, 0, NONE)).isPresent();
    }
  }

  @Property(tries = 200)
  void a_closed_room_never_lets_anybody_in_again_and_bears_no_speed(
      @ForAll @DoubleRange(min = 1.01, max = 20) double left) {
    LowestMetre closed = new LowestMetre(ROOM, 0, 1, 20);
    AirLevel before = AirLevel.of(Solvent.ACETONE, left * 500e-6);
    assertThat(closed.minutesUntil(before, AirLevel.CLEAN, NONE)).isEmpty();
    assertThat(closed.bearableSpeed(step(0, 60, 1), NONE, 480)).isZero();
  }

  /** The room is aired quickly against 200 minutes, so both stand at their steady level. */
  @Example
  void at_the_fastest_twice_the_usual_the_peak_of_a_long_step_is_twice_as_high() {
    AirFigures usual = AirFigures.of(List.of(step(0, 400, 1)), ROOM, 60, 1, 20);
    AirFigures fast = AirFigures.of(List.of(step(0, 400, 0.5)), ROOM, 60, 1, 20);
    assertThat(fast.peakLel() / usual.peakLel()).isCloseTo(2, within(0.001));
    assertThat(fast.layerPeakLel() / fast.peakLel()).isCloseTo(3.5, within(1e-9));
    assertThat(fast.together()).isCloseTo(usual.together(), within(usual.together() * 1e-9));
  }

  private static VapourStep section(VapourStep s, double share) {
    return laying(0, s.minutes() * share, s.fastest() * share, s.liquids().get(0).mm3() * share);
  }

  private static List<VapourStep> steps(List<Integer> minutes, double quick) {
    List<VapourStep> steps = new ArrayList<>();
    double at = 0;
    for (int m : minutes) {
      steps.add(step(at, m, quick));
      at += m * 1.4;
    }
    return steps;
  }

  private static VapourStep step(double from, double minutes, double quick) {
    return step(from, minutes, quick, minutes);
  }

  private static VapourStep step(double from, double minutes, double quick, double amount) {
    return laying(from, minutes, minutes * quick, amount * 3e4);
  }

  private static VapourStep laying(double from, double minutes, double fastest, double mm3) {
    List<VapourStep.Liquid> liquids = List.of(new VapourStep.Liquid(Solvent.ACETONE, mm3));
    return new VapourStep(COAT, slabwright.work.Said.text("step"), from, minutes, fastest, liquids);
  }
}
