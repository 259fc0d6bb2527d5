package slabwright.work.days;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.work.Said;

class DayTableTest {
  /** A Monday. */
  private static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);

  private static final List<WorkStep> COATS =
      List.of(
          TestSteps.coat("one", "One", "hall", hours(3), 2),
          TestSteps.pausing("aside", "Aside", "terrace", hours(1), 1),
          TestSteps.coat(
                  "two", "Two", "hall", hours(3), 2, StepWait.window("one", hours(12), hours(24)))
              .withAbrading(hours(2)));

  private static final DayTable TABLE = table();

  private static DayTable table() {
    WorkingWeek crew = WorkingWeek.weekdays(2, LocalTime.of(7, 0), hours(9));
    DayPlan plan = ((Planned.Days) DayPlanner.plan(COATS, crew, MONDAY)).plan();
    return DayTable.of(plan);
  }

  private static DayTable.Line line(String id) {
    return TABLE.lines().stream().filter(l -> l.id().equals(id)).findFirst().orElseThrow();
  }

  @Test
  void a_line_says_when_the_next_step_may_follow_and_until_when() {
    assertThat(line("one").nextFrom()).contains(MONDAY.atTime(22, 0));
    assertThat(line("one").nextUntil()).contains(MONDAY.plusDays(1).atTime(10, 0));
    assertThat(line("two").nextFrom()).isEmpty();
  }

  @Test
  void what_sets_the_end_is_marked_and_what_can_wait_changes_nothing_until_it_becomes_the_last() {
    assertThat(line("one").critical()).as("dry long before the next morning").isFalse();
    assertThat(line("two").critical()).isTrue();
    assertThat(line("aside").critical()).isFalse();
    assertThat(line("aside").late())
        .extracting(l -> l.later().orElseThrow())
        .containsExactly(hours(0), hours(1));
  }

  @Test
  void a_late_coat_ends_the_job_later_and_is_abraded_once_its_window_has_passed() {
    DayTable.Late twoHours = line("two").late().get(0);
    assertThat(twoHours.later()).contains(hours(2));
    assertThat(twoHours.abrade()).isEmpty();
    DayTable.Late aDay = line("two").late().get(1);
    assertThat(aDay.by()).isEqualTo(Duration.ofDays(1));
    assertThat(aDay.abrade()).containsExactly(Said.text("Two"));
    assertThat(aDay.later()).contains(hours(24));
  }

  @Test
  void sums_are_the_plans_own() {
    assertThat(TABLE.personTime()).isEqualTo(hours(3 * 2 + 1 + 3 * 2));
    assertThat(TABLE.begins()).isEqualTo(MONDAY.atTime(7, 0));
    assertThat(TABLE.ends()).isEqualTo(MONDAY.plusDays(1).atTime(10, 0));
  }

  private static Duration hours(int h) {
    return Duration.ofHours(h);
  }
}
