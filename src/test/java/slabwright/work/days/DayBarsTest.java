package slabwright.work.days;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.work.Said;

class DayBarsTest {
  private static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);

  @Test
  void a_coat_shows_work_drying_its_window_and_who_is_kept_out() {
    DayBars bars = DayBars.of(plan());
    assertThat(bars.rows().get(0).bars())
        .extracting(DayBars.Bar::kind)
        .containsExactly(
            DayBars.Kind.WORK, DayBars.Kind.DRYING, DayBars.Kind.WINDOW, DayBars.Kind.KEEP_OUT);
    assertThat(bars.rows().get(0).bars().get(2).span())
        .isEqualTo(new TimeSpan(MONDAY.atTime(12, 0), MONDAY.plusDays(1).atTime(9, 0)));
  }

  @Test
  void the_bars_reach_from_the_first_morning_to_the_last_thing_that_happens() {
    DayBars bars = DayBars.of(plan());
    assertThat(bars.from()).isEqualTo(MONDAY.atTime(7, 0));
    assertThat(bars.to()).isEqualTo(MONDAY.plusDays(1).atTime(9, 0));
    assertThat(bars.rows()).allMatch(DayBars.Row::critical);
  }

  @Test
  void two_floor_areas_of_one_name_are_two_groups() {
    DayPlan plan =
        planOf(
            TestSteps.named(TestSteps.coat("a", "A", "first", Duration.ofHours(2), 1), "Hall"),
            TestSteps.named(TestSteps.coat("b", "B", "second", Duration.ofHours(2), 1), "Hall"));
    assertThat(DayBars.of(plan).groups())
        .extracting(DayBars.Group::area, g -> g.rows().size())
        .containsExactly(tuple("Hall", 1), tuple("Hall", 1));
  }

  @Test
  void keep_out_times_of_two_floor_areas_of_one_name_are_not_joined() {
    KeepOut solvent = new KeepOut(Said.text("solvent"), Duration.ofHours(3));
    DayPlan plan =
        planOf(
            TestSteps.named(TestSteps.coat("a", "A", "first", Duration.ofHours(2), 1), "Hall")
                .withKeepOut(solvent),
            TestSteps.named(TestSteps.coat("b", "B", "second", Duration.ofHours(1), 1), "Hall")
                .withKeepOut(solvent));
    assertThat(KeepOutPeriod.of(plan)).hasSize(2);
  }

  private static DayPlan plan() {
    WorkStep one =
        TestSteps.coat("one", "One", "hall", Duration.ofHours(2), 1)
            .withKeepOut(new KeepOut(Said.text("solvent"), Duration.ofHours(1)));
    StepWait wait = StepWait.window("one", Duration.ofHours(3), Duration.ofHours(24));
    WorkStep two = TestSteps.coat("two", "Two", "hall", Duration.ofHours(2), 1, wait);
    return planOf(one, two);
  }

  private static DayPlan planOf(WorkStep... steps) {
    WorkingWeek hours = WorkingWeek.weekdays(2, LocalTime.of(7, 0), Duration.ofHours(9));
    return ((Planned.Days) DayPlanner.plan(List.of(steps), hours, MONDAY)).plan();
  }
}
