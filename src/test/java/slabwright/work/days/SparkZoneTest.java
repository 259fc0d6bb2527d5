package slabwright.work.days;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who stays out of a floor that shares a doorway with one that is coated from seven to nine. */
class SparkZoneTest {
  private static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);
  private static final Duration TWO = Duration.ofHours(2);
  private static final Duration THREE = Duration.ofHours(3);
  private static final WorkingWeek CREW =
      WorkingWeek.weekdays(2, LocalTime.of(7, 0), Duration.ofHours(9));

  private static final StepWait AFTER = StepWait.straightAfter("coat");

  private static WorkStep coat(VapourReach.Closes closes) {
    return TestSteps.solvent("coat", "hall", TWO, new VapourReach(List.of("yard"), THREE, closes));
  }

  private static WorkStep next(String kind, String area) {
    return switch (kind) {
      case "sparks" -> TestSteps.pausing("next", "Grind", area, TWO, 1, AFTER);
      case "masked" -> TestSteps.masked("next", area, TWO, 1, AFTER);
      default -> TestSteps.coat("next", "Coat", area, TWO, 1, AFTER);
    };
  }

  private static LocalDateTime start(WorkStep coat, WorkStep next) {
    Planned planned = DayPlanner.plan(List.of(coat, next), CREW, MONDAY);
    DayPlan plan = ((Planned.Days) planned).plan();
    assertThat(plan.step("coat").orElseThrow().start()).isEqualTo(MONDAY.atTime(7, 0));
    return plan.step("next").orElseThrow().start();
  }

  @ParameterizedTest
  @CsvSource({
    "NOBODY, plain, 9", "NOBODY, masked, 9",
    "UNPROTECTED, plain, 12", "UNPROTECTED, masked, 9",
    "EVERYONE, plain, 12", "EVERYONE, masked, 12"
  })
  void people_wait_until_vapour_beyond_the_doorway_is_gone_unless_they_are_protected(
      VapourReach.Closes closes, String kind, int hour) {
    assertThat(start(coat(closes), next(kind, "yard"))).isEqualTo(MONDAY.atTime(hour, 0));
    assertThat(start(coat(closes), next(kind, "attic"))).isEqualTo(MONDAY.atTime(9, 0));
  }

  private static SparkZone zone(WorkStep step) {
    return SparkZone.of(step);
  }

  private static TimeSpan span(int from, int to) {
    return new TimeSpan(MONDAY.atTime(from, 0), MONDAY.atTime(to, 0));
  }

  @Test
  void sparks_wait_for_vapour_whomever_else_it_lets_in() {
    for (VapourReach.Closes closes : VapourReach.Closes.values()) {
      SparkZone wet = zone(coat(closes));
      SparkZone sparks = zone(next("sparks", "yard"));
      assertThat(sparks.keepsApart(wet)).isTrue();
      assertThat(sparks.notBefore(span(9, 11), wet, span(7, 9))).contains(MONDAY.atTime(12, 0));
      assertThat(sparks.notBefore(span(12, 14), wet, span(7, 9))).isEmpty();
      assertThat(zone(next("sparks", "attic")).keepsApart(wet)).isFalse();
    }
  }

  /** Vapour is gone after three hours, dust may fall after five: the longer one counts. */
  @Test
  void the_longer_of_vapour_and_drying_keeps_what_sparks_and_raises_dust_out() {
    WorkStep solvent = coat(VapourReach.Closes.NOBODY);
    WorkStep both =
        solvent.in(
            solvent.air().wet(new WetFilm(List.of("hall", "yard"), Duration.ofHours(5))),
            solvent.waits());
    WorkStep soon =
        solvent.in(
            solvent.air().wet(new WetFilm(List.of("hall", "yard"), Duration.ofHours(1))),
            solvent.waits());
    SparkZone grinding = zone(next("sparks", "yard"));
    assertThat(grinding.notBefore(span(9, 11), zone(both), span(7, 9)))
        .contains(MONDAY.atTime(14, 0));
    assertThat(grinding.notBefore(span(9, 11), zone(soon), span(7, 9)))
        .contains(MONDAY.atTime(12, 0));
  }
}
