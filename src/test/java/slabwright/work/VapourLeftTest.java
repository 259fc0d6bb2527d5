package slabwright.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import slabwright.units.QuarterHour;
import slabwright.work.days.DayPlan;
import slabwright.work.days.KeepOutPeriod;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.TimeSpan;

/** Vapour that outlasts the day of the crew, in the tram hall. */
class VapourLeftTest {
  private static final WorkPlan PLAN = WorkSamples.plan(WorkSamples.tramHall());
  private static final DayPlan DAYS = PLAN.days().maybe().orElseThrow();
  private static final List<VapourLeft> LEFT = VapourLeft.of(PLAN);

  /** The last told end of each day, reckoned here anew. */
  private static Map<LocalDate, LocalDateTime> ends() {
    Map<LocalDate, LocalDateTime> ends = new TreeMap<>();
    for (ScheduledStep s : DAYS.steps()) {
      for (TimeSpan t : s.spans()) {
        LocalDateTime from = QuarterHour.up(t.start());
        LocalDateTime end = QuarterHour.up(t.end());
        ends.merge(
            t.start().toLocalDate(),
            end.isAfter(from) ? end : from.plus(QuarterHour.STEP),
            (a, b) -> a.isAfter(b) ? a : b);
      }
    }
    return ends;
  }

  @Test
  void each_day_whose_vapour_outlasts_the_crew_is_told_and_no_other() {
    Map<LocalDate, LocalDateTime> ends = ends();
    for (LocalDate day : ends.keySet()) {
      boolean out =
          DAYS.steps().stream()
              .filter(s -> !s.end().toLocalDate().isAfter(day))
              .flatMap(s -> KeepOutPeriod.until(s).stream())
              .anyMatch(ends.get(day)::isBefore);
      assertThat(LEFT.stream().anyMatch(l -> l.from().equals(ends.get(day))))
          .as(day.toString())
          .isEqualTo(out);
    }
  }

  @Test
  void the_terraces_sealer_is_left_wet_and_its_floor_and_the_hall_behind_its_doors_stay_shut() {
    for (int coat = 1; coat <= 2; coat++) {
      ScheduledStep sealer = DAYS.step("terrace/coat.1.outdoor-sealer." + coat).orElseThrow();
      assertThat(LEFT)
          .filteredOn(l -> l.from().toLocalDate().equals(sealer.start().toLocalDate()))
          .singleElement()
          .satisfies(
              l -> {
                assertThat(l.until()).isEqualTo(KeepOutPeriod.until(sealer).orElseThrow());
                assertThat(l.areas()).containsExactly("Terrace", "Reading hall");
                assertThat(l.present()).isFalse();
                assertThat(l.reader()).isEqualTo(MeterWatch.of(DAYS, sealer).person());
              });
    }
  }

  /** The book cleans up for 30 min after a day's last step. */
  @Test
  void while_the_crew_cleans_up_somebody_reads_on_and_nobody_takes_over() {
    assertThat(LEFT)
        .isNotEmpty()
        .allSatisfy(
            l ->
                assertThat(l.present())
                    .isEqualTo(!l.until().isAfter(l.from().plus(Duration.ofMinutes(30)))));
  }
}
