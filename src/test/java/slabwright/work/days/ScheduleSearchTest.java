package slabwright.work.days;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import slabwright.work.Said;

/** Orders other than the given one, each with days worked out by hand: nine hours from seven. */
class ScheduleSearchTest {
  private static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);

  private static Duration hours(int h) {
    return Duration.ofHours(h);
  }

  private static WorkingWeek crew(int people) {
    return WorkingWeek.weekdays(people, LocalTime.of(7, 0), hours(9));
  }

  private static DayPlan plan(int people, WorkStep... steps) {
    return ((Planned.Days) DayPlanner.plan(List.of(steps), crew(people), MONDAY)).plan();
  }

  private static LocalDateTime start(DayPlan plan, String id) {
    return plan.step(id).orElseThrow().start();
  }

  /**
   * As given the grinding fills Monday, the coats follow on Tuesday and Wednesday. With the coat
   * first, grinding fills its drying and the rest of it follows the second coat on Tuesday.
   */
  @Test
  void what_dries_is_laid_first_and_other_work_done_while_it_dries() {
    DayPlan plan =
        plan(
            1,
            TestSteps.pausing("grind", "Grind", "terrace", hours(9), 1),
            TestSteps.coat("one", "One", "hall", hours(3), 1),
            TestSteps.coat("two", "Two", "hall", hours(3), 1, StepWait.atLeast("one", hours(8))));
    assertThat(start(plan, "one")).isEqualTo(MONDAY.atTime(7, 0));
    assertThat(start(plan, "grind")).isEqualTo(MONDAY.atTime(10, 0));
    assertThat(plan.end()).isEqualTo(MONDAY.plusDays(1).atTime(13, 0));
  }

  /** Begun with the short wait, as given, the last coat comes too late for Monday. */
  @Test
  void of_two_floors_the_one_whose_coat_dries_longer_is_begun() {
    DayPlan plan =
        plan(
            1,
            TestSteps.coat("a1", "A1", "hall", hours(2), 1),
            TestSteps.coat("a2", "A2", "hall", hours(2), 1, StepWait.atLeast("a1", hours(1))),
            TestSteps.coat("b1", "B1", "terrace", hours(2), 1),
            TestSteps.coat("b2", "B2", "terrace", hours(2), 1, StepWait.atLeast("b1", hours(4))));
    assertThat(start(plan, "b1")).isEqualTo(MONDAY.atTime(7, 0));
    assertThat(start(plan, "a1")).isEqualTo(MONDAY.atTime(9, 0));
    assertThat(start(plan, "a2")).isEqualTo(MONDAY.atTime(12, 0));
    assertThat(plan.end()).isEqualTo(MONDAY.atTime(16, 0));
  }

  /** The hall's coats end on Tuesday of the second week at ten, held back or abraded alike. */
  @Test
  void of_two_plans_that_end_alike_the_one_without_abrading_is_taken() {
    WorkStep two =
        TestSteps.coat(
                "two", "Two", "hall", hours(3), 2, StepWait.window("one", hours(12), hours(24)))
            .withAbrading(hours(2));
    DayPlan plan =
        plan(
            3,
            TestSteps.pausing("prep", "Prep", "hall", hours(36), 2),
            TestSteps.coat("one", "One", "hall", hours(3), 2, StepWait.straightAfter("prep")),
            two,
            TestSteps.pausing("terrace", "Terrace", "terrace", hours(62), 1));
    assertThat(plan.end()).isEqualTo(MONDAY.plusDays(8).atTime(15, 0));
    assertThat(plan.abrading()).isZero();
    assertThat(start(plan, "two"))
        .isAfterOrEqualTo(plan.step("one").orElseThrow().end().plusHours(12))
        .isBeforeOrEqualTo(plan.step("one").orElseThrow().end().plusHours(24));
  }

  @Test
  void a_step_asked_for_later_begins_then_and_what_need_not_wait_goes_before_it() {
    WorkStep late = TestSteps.coat("late", "Late", "hall", hours(3), 1);
    WorkStep other = TestSteps.coat("other", "Other", "terrace", hours(3), 1);
    Planned planned =
        DayPlanner.plan(
            List.of(late, other),
            crew(1),
            JobMeans.UNLIMITED,
            MONDAY,
            Map.of("late", MONDAY.atTime(12, 0)));
    DayPlan plan = ((Planned.Days) planned).plan();
    assertThat(start(plan, "other")).isEqualTo(MONDAY.atTime(7, 0));
    assertThat(start(plan, "late")).isEqualTo(MONDAY.atTime(12, 0));
    assertThat(plan.end()).isEqualTo(MONDAY.atTime(15, 0));
  }

  /** Held back by its window to Monday of the second week, asked for a day later than that. */
  @Test
  void a_step_that_is_held_back_and_asked_for_later_begins_at_the_later_of_both() {
    WorkStep two =
        TestSteps.coat(
            "two", "Two", "hall", hours(3), 2, StepWait.window("one", hours(12), hours(24)));
    List<WorkStep> steps =
        List.of(
            TestSteps.pausing("prep", "Prep", "hall", hours(36), 2),
            TestSteps.coat("one", "One", "hall", hours(3), 2, StepWait.straightAfter("prep")),
            two);
    LocalDateTime asked = MONDAY.plusDays(8).atTime(9, 0);
    Planned planned =
        DayPlanner.plan(steps, crew(2), JobMeans.UNLIMITED, MONDAY, Map.of("one", asked));
    DayPlan plan = ((Planned.Days) planned).plan();
    assertThat(start(plan, "one")).isEqualTo(asked);
    assertThat(start(plan, "two")).isEqualTo(MONDAY.plusDays(9).atTime(7, 0));
  }

  @Test
  void the_first_thing_that_stops_a_plan_is_the_one_that_is_said() {
    WorkStep night =
        TestSteps.coat(
            "n", "Night coat", "hall", hours(3), 1, StepWait.window("one", hours(12), hours(13)));
    WorkStep other =
        TestSteps.coat(
            "o", "Other", "hall", hours(3), 1, StepWait.window("n", hours(12), hours(13)));
    Planned planned =
        DayPlanner.plan(
            List.of(TestSteps.coat("one", "One", "hall", hours(3), 1), night, other),
            crew(1),
            MONDAY);
    assertThat(Said.of(((Planned.Refused) planned).sentence())).contains("\"Night coat\"");
  }
}
