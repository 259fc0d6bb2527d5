package slabwright.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.RateFormat;
import slabwright.units.UnitSystem;
import slabwright.work.air.AirVolume;
import slabwright.work.air.BreathingProtection;
import slabwright.work.air.EntryLimit;
import slabwright.work.air.LowestMetre;
import slabwright.work.air.Solvent;
import slabwright.work.air.VapourStep;
import slabwright.work.days.WorkStep;
import slabwright.work.step.AirEffect;
import slabwright.work.step.CoatNumber;
import slabwright.work.step.StepType;

/**
 * What is offered where a crew may not lay: an invented hall of 50 m² and 4 m, aired with 20 m³ a
 * minute, in which 0.4 L of a solvent dye is laid on 10 m² within half an hour.
 */
class VapourHoldTest {
  private static final UnitSystem METRIC = UnitSystem.METRIC;
  private static final double SHIFT = 480;
  private static final LowestMetre AIRED = new LowestMetre(new AirVolume(50, 4), 20, 2, 20);
  private static final LowestMetre CLOSED = new LowestMetre(new AirVolume(50, 4), 0, 2, 20);
  private static final Optional<BreathingProtection> NOTHING = Optional.empty();
  private static final Optional<BreathingProtection> MASK =
      Optional.of(new BreathingProtection("half mask", 10));

  private static final StepType TYPE =
      StepType.coat("hall", new CoatNumber(1, 1), new AirEffect.Vapour("dye", 1));
  private static final VapourStep STEP =
      new VapourStep(
          TYPE, Said.text("dye"), 0, 60, 30, List.of(new VapourStep.Liquid(Solvent.ACETONE, 4e5)));
  private static final WorkStep TASK =
      new WorkStep(
          "coat.1.1",
          Said.text("dye"),
          "hall",
          TYPE,
          Duration.ofHours(1),
          1,
          false,
          List.of(),
          Optional.empty(),
          Optional.empty());

  private static HeldStep held(
      LowestMetre air, double mm2, Optional<BreathingProtection> worn, EntryLimit limit) {
    return new VapourHold(air, 20, SHIFT, worn, METRIC)
        .of(TASK, new LaidVapour(STEP, mm2, 4e5), limit);
  }

  private static List<String> keys(HeldStep held) {
    return held.frees().stream().map(m -> m.key().replace("work.held.", "")).toList();
  }

  @Test
  void who_wears_nothing_is_offered_every_way_out() {
    HeldStep held = held(AIRED, 10e6, NOTHING, EntryLimit.EIGHT_HOURS);
    assertThat(keys(held))
        .containsExactly("slower", "more-air", "sections", "protection", "other-product");
    assertThat(held.step()).isEqualTo("coat.1.1");
    assertThat(held.freeingAir()).isEqualTo(AIRED.airNeeded(STEP, NOTHING));
  }

  /** In half an hour 10 m² and 0.4 L are 20 m² and 0.8 L an hour. */
  @Test
  void slower_is_the_fastest_laying_times_what_the_air_bears() {
    double speed = AIRED.bearableSpeed(STEP, NOTHING, SHIFT);
    assertThat(speed).isBetween(0.1, 0.2);
    assertThat(held(AIRED, 10e6, NOTHING, EntryLimit.EIGHT_HOURS).frees().get(0))
        .isEqualTo(
            Message.of(
                "work.held.slower",
                RateFormat.areaRate(20e6 * speed, METRIC),
                QuantityFormat.volume(8e5 * speed, METRIC),
                "1,200 m³/h"));
  }

  @Test
  void a_section_is_the_share_of_the_floor_that_the_air_bears_in_one_go() {
    double share = AIRED.bearableShare(STEP, NOTHING);
    assertThat(held(AIRED, 10e6, NOTHING, EntryLimit.EIGHT_HOURS).frees().get(2))
        .isEqualTo(
            Message.of(
                "work.held.sections",
                QuantityFormat.area(10e6 * share, METRIC),
                AIRED.sharesPerShift(STEP, share, NOTHING)));
  }

  @Test
  void a_filler_covers_no_floor_so_it_is_slower_by_volume_and_has_no_sections() {
    assertThat(keys(held(AIRED, 0, NOTHING, EntryLimit.EIGHT_HOURS)))
        .containsExactly("slower-volume", "more-air", "protection", "other-product");
  }

  @Test
  void in_a_closed_room_laying_slower_helps_nobody() {
    assertThat(keys(held(CLOSED, 10e6, NOTHING, EntryLimit.EIGHT_HOURS)))
        .containsExactly("more-air", "protection", "other-product");
  }

  @Test
  void a_mask_is_offered_to_who_wears_none_and_never_against_fire_or_danger() {
    assertThat(keys(held(AIRED, 10e6, MASK, EntryLimit.PROTECTION_FACTOR)))
        .doesNotContain("protection");
    assertThat(keys(held(AIRED, 10e6, NOTHING, EntryLimit.TENTH_OF_LEL)))
        .doesNotContain("protection");
    assertThat(keys(held(AIRED, 10e6, NOTHING, EntryLimit.DANGER))).doesNotContain("protection");
  }

  @ParameterizedTest
  @CsvSource({
    "TENTH_OF_LEL, work.entry.tenth-of-lel",
    "DANGER, work.entry.danger",
    "PROTECTION_FACTOR, work.entry.protection-factor",
    "FIFTEEN_MINUTES, work.entry.fifteen-minutes",
    "EIGHT_HOURS, work.entry.eight-hours"
  })
  void the_limit_that_stops_the_step_is_named(EntryLimit limit, String key) {
    HeldStep held = held(AIRED, 10e6, NOTHING, limit);
    assertThat(held.why().values()).contains(Message.of(key));
  }
}
