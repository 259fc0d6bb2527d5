package slabwright.work.days;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class CriticalStepsTest {
  private static final LocalDate DAY = LocalDate.of(2027, 3, 4);
  private static final WorkingWeek HOURS =
      WorkingWeek.weekdays(3, LocalTime.of(7, 30), Duration.ofHours(8));

  @Test
  void a_step_stopped_early_to_leave_half_an_hour_has_that_much_slack() {
    DayPlan plan = plan(Duration.ofMinutes(86), Duration.ofMinutes(402));

    assertThat(plan.end()).isEqualTo(LocalDateTime.of(2027, 3, 5, 8, 0));
    assertThat(CriticalSteps.of(plan)).isEmpty();
  }

  @Test
  void the_same_step_worked_to_the_days_end_has_none() {
    DayPlan plan = plan(Duration.ofMinutes(86), Duration.ofMinutes(426));

    assertThat(plan.end()).isEqualTo(LocalDateTime.of(2027, 3, 5, 8, 2));
    assertThat(CriticalSteps.of(plan)).isEqualTo(Set.of("before", "last"));
  }

  private static DayPlan plan(Duration before, Duration last) {
    List<WorkStep> tasks =
        List.of(
            TestSteps.coat("before", "Before", "hall", before, 3),
            TestSteps.pausing(
                "last", "Last", "hall", last, 3, StepWait.atLeast("before", Duration.ZERO)));
    return ((Planned.Days) DayPlanner.plan(tasks, HOURS, DAY)).plan();
  }
}
