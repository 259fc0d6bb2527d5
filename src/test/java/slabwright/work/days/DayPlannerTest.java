package slabwright.work.days;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.work.Said;
import slabwright.work.step.AirEffect;
import slabwright.work.step.StepKind;
import slabwright.work.step.StepType;
import slabwright.work.step.ToolKind;

class DayPlannerTest {
  /** A Monday. */
  private static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);

  private static final WorkingWeek CREW_OF_TWO =
      WorkingWeek.weekdays(2, LocalTime.of(7, 0), Duration.ofHours(9));

  private static final WorkStep GRIND = TestSteps.pausing("grind", "Grind", "hall", hours(12), 2);

  @Test
  void grinding_goes_on_the_next_morning() {
    DayPlan plan = plan(GRIND);
    assertThat(plan.steps().get(0).spans())
        .containsExactly(span(MONDAY, 7, 16), span(MONDAY.plusDays(1), 7, 10));
  }

  @Test
  void a_trifle_is_not_left_over_for_the_morning_but_half_an_hour() {
    DayPlan plan = plan(TestSteps.pausing("grind", "Grind", "hall", Duration.ofMinutes(543), 2));
    assertThat(plan.steps().get(0).spans())
        .containsExactly(
            new TimeSpan(MONDAY.atTime(7, 0), MONDAY.atTime(15, 33)),
            new TimeSpan(MONDAY.plusDays(1).atTime(7, 0), MONDAY.plusDays(1).atTime(7, 30)));
  }

  @Test
  void nothing_is_begun_for_six_minutes_before_the_night() {
    DayPlan plan =
        plan(
            TestSteps.pausing("grind", "Grind", "hall", Duration.ofMinutes(534), 2),
            TestSteps.pausing(
                "lay", "Lay", "hall", Duration.ofMinutes(110), 2, StepWait.straightAfter("grind")));
    assertThat(plan.step("lay").orElseThrow().spans())
        .containsExactly(
            new TimeSpan(MONDAY.plusDays(1).atTime(7, 0), MONDAY.plusDays(1).atTime(8, 50)));
  }

  @Test
  void a_step_shorter_than_half_an_hour_is_never_split() {
    DayPlan plan =
        plan(
            TestSteps.pausing("grind", "Grind", "hall", Duration.ofMinutes(520), 2),
            TestSteps.pausing(
                "lay", "Lay", "hall", Duration.ofMinutes(29), 2, StepWait.straightAfter("grind")));
    assertThat(plan.step("lay").orElseThrow().spans())
        .containsExactly(
            new TimeSpan(MONDAY.plusDays(1).atTime(7, 0), MONDAY.plusDays(1).atTime(7, 29)));
  }

  @Test
  void a_coat_that_does_not_fit_the_rest_of_the_day_waits_for_the_morning() {
    DayPlan plan =
        plan(
            GRIND,
            TestSteps.coat("coat", "Coat", "hall", hours(7), 2, StepWait.straightAfter("grind")));
    assertThat(start(plan, "coat")).isEqualTo(MONDAY.plusDays(2).atTime(7, 0));
  }

  @Test
  void a_coat_waits_for_drying_over_night() {
    DayPlan plan =
        plan(
            TestSteps.coat("one", "One", "hall", hours(3), 2),
            TestSteps.coat("two", "Two", "hall", hours(3), 2, StepWait.atLeast("one", hours(23))));
    assertThat(start(plan, "two")).isEqualTo(MONDAY.plusDays(1).atTime(9, 0));
  }

  @Test
  void a_missed_recoat_window_gets_an_abrading_step() {
    DayPlan plan = plan(FRIDAY_COATS.get(0), FRIDAY_COATS.get(1), FRIDAY_COATS.get(2));
    ScheduledStep abrade = plan.step("two.abrade").orElseThrow();
    assertThat(abrade.abradesFor()).isEqualTo("two");
    assertThat(abrade.start()).isEqualTo(MONDAY.plusDays(7).atTime(7, 0));
    assertThat(start(plan, "two")).isEqualTo(abrade.end());
  }

  @Test
  void an_abrading_step_holds_the_floor_grinder_and_a_vacuum_on_the_coats_floor_area() {
    DayPlan plan = plan(FRIDAY_COATS.get(0), FRIDAY_COATS.get(1), FRIDAY_COATS.get(2));
    StepType type = plan.abradingFor("two").orElseThrow().task().type();
    assertThat(type.tools()).containsExactlyInAnyOrder(ToolKind.FLOOR_GRINDER, ToolKind.VACUUM);
    assertThat(type.air()).isEqualTo(AirEffect.DUST);
    assertThat(type.isOn("hall")).isTrue();
  }

  /**
   * The first coat ends on Friday, the second must follow within a day: the weekend is too long.
   */
  private static final List<WorkStep> FRIDAY_COATS =
      List.of(
          TestSteps.pausing("prep", "Prep", "hall", hours(36), 2),
          TestSteps.coat("one", "One", "hall", hours(3), 2, StepWait.straightAfter("prep")),
          TestSteps.coat(
                  "two", "Two", "hall", hours(3), 2, StepWait.window("one", hours(12), hours(24)))
              .withAbrading(hours(2)));

  @Test
  void a_coat_is_held_back_when_the_next_one_would_miss_its_window_unabraded() {
    WorkStep two =
        TestSteps.coat(
            "two", "Two", "hall", hours(3), 2, StepWait.window("one", hours(12), hours(24)));
    DayPlan plan = plan(FRIDAY_COATS.get(0), FRIDAY_COATS.get(1), two);
    assertThat(plan.step("one").orElseThrow().heldBy())
        .isEqualTo(new BindingConstraint.Window("one"));
    assertThat(start(plan, "two")).isBefore(plan.step("one").orElseThrow().end().plusDays(1));
    assertThat(plan.abrading()).isZero();
  }

  @Test
  void a_window_that_lies_in_the_night_without_an_abrading_rate_is_refused() {
    WorkStep two =
        TestSteps.coat(
            "two", "Two", "hall", hours(3), 2, StepWait.window("one", hours(12), hours(13)));
    Planned planned =
        DayPlanner.plan(
            List.of(FRIDAY_COATS.get(0), FRIDAY_COATS.get(1), two), CREW_OF_TWO, MONDAY);
    assertThat(Said.of(((Planned.Refused) planned).sentence()))
        .contains("\"Two\"")
        .contains("abrading rate");
  }

  @Test
  void indoor_and_outdoor_run_side_by_side_when_there_are_hands() {
    DayPlan plan =
        plan(
            TestSteps.pausing("in", "In", "hall", hours(4), 1),
            TestSteps.pausing("out", "Out", "terrace", hours(4), 1));
    assertThat(start(plan, "out")).isEqualTo(start(plan, "in"));
  }

  @Test
  void the_crew_is_never_in_two_places() {
    DayPlan plan =
        plan(
            TestSteps.pausing("in", "In", "hall", hours(4), 2),
            TestSteps.pausing("out", "Out", "terrace", hours(4), 1));
    assertThat(start(plan, "out")).isEqualTo(MONDAY.atTime(11, 0));
    assertThat(plan.step("out").orElseThrow().heldBy()).isEqualTo(new BindingConstraint.Crew("in"));
  }

  @Test
  void a_step_with_time_to_spare_is_not_critical() {
    DayPlan plan =
        plan(
            TestSteps.coat("one", "One", "hall", hours(3), 1),
            TestSteps.pausing("aside", "Aside", "terrace", hours(1), 1),
            TestSteps.coat("two", "Two", "hall", hours(3), 1, StepWait.atLeast("one", hours(2))));
    assertThat(CriticalSteps.of(plan)).containsExactlyInAnyOrder("one", "two");
    assertThat(plan.earliestNext("one")).contains(MONDAY.atTime(12, 0));
  }

  /** What dries overnight anyway may be laid later the same day. */
  @Test
  void a_step_before_a_night_that_is_waited_out_anyway_is_not_critical() {
    DayPlan plan =
        plan(
            TestSteps.coat("one", "One", "hall", hours(1), 1),
            TestSteps.coat("two", "Two", "hall", hours(3), 1, StepWait.atLeast("one", hours(10))));
    assertThat(start(plan, "two").toLocalDate()).isAfter(MONDAY);
    assertThat(CriticalSteps.of(plan)).containsExactly("two");
  }

  @Test
  void a_step_longer_than_a_day_in_one_go_is_refused() {
    Planned planned =
        DayPlanner.plan(
            List.of(TestSteps.coat("c", "Topcoat", "hall", hours(10), 1)), CREW_OF_TWO, MONDAY);
    assertThat(Said.of(((Planned.Refused) planned).sentence()))
        .contains("10 h 00 min")
        .contains("add hands");
  }

  @Test
  void more_people_than_the_crew_has_are_refused() {
    Planned planned =
        DayPlanner.plan(
            List.of(TestSteps.coat("c", "C", "hall", hours(1), 3)), CREW_OF_TWO, MONDAY);
    assertThat(Said.of(((Planned.Refused) planned).sentence()))
        .contains("3 people")
        .contains("crew has 2");
  }

  @Test
  void a_step_of_a_year_is_taken_for_a_slip_of_the_pen() {
    Planned planned =
        DayPlanner.plan(
            List.of(TestSteps.pausing("g", "Grind", "hall", hours(9 * 251), 1)),
            CREW_OF_TWO,
            MONDAY);
    assertThat(Said.of(((Planned.Refused) planned).sentence()))
        .contains("250 working days")
        .contains("rate");
  }

  @Test
  void a_late_start_says_how_much_later_the_job_ends() {
    List<WorkStep> tasks =
        List.of(
            TestSteps.coat("one", "One", "hall", hours(2), 1),
            TestSteps.coat("two", "Two", "hall", hours(2), 1, StepWait.atLeast("one", hours(2))));
    DayPlan plan = plan(tasks.get(0), tasks.get(1));
    LateStart.Result late = LateStart.of(plan, tasks, "one", hours(2));
    assertThat(((LateStart.Result.Later) late).consequence().end()).isEqualTo(hours(2));
  }

  @Test
  void other_trades_stay_out_until_the_vapour_is_gone() {
    DayPlan plan =
        plan(
            TestSteps.coat("dye", "Dye", "hall", hours(2), 1)
                .withKeepOut(new KeepOut(Said.text("solvent"), hours(3))),
            TestSteps.coat("again", "Dye again", "hall", hours(1), 1, StepWait.straightAfter("dye"))
                .withKeepOut(new KeepOut(Said.text("solvent"), hours(3))));
    assertThat(KeepOutPeriod.of(plan))
        .containsExactly(
            new KeepOutPeriod("hall", List.of(Said.text("solvent")), span(MONDAY, 7, 13)));
  }

  @Test
  void other_trades_stay_out_no_shorter_than_the_crew_is_told_to_work() {
    KeepOut dry = new KeepOut(Said.text("solvent"), Duration.ofMinutes(20));
    DayPlan plan =
        plan(
            TestSteps.coat("lay", "Lay", "hall", Duration.ofMinutes(61), 1),
            TestSteps.coat(
                    "mist", "Mist", "hall", Duration.ofMinutes(4), 1, StepWait.straightAfter("lay"))
                .withKeepOut(dry));
    // Planned from 8:01 to 8:05, told as 8:15 to 8:30: then it dries for 20 minutes.
    assertThat(KeepOutPeriod.of(plan).get(0).span().toldAsShut())
        .isEqualTo(new TimeSpan(MONDAY.atTime(8, 0), MONDAY.atTime(9, 0)));
  }

  @Test
  void floors_that_the_same_air_gets_to_are_kept_off_as_long() {
    KeepOut reaching =
        new KeepOut(
            Said.text("solvent"), hours(3), List.of(new KeepOut.Beside("terrace", "Terrace")));
    DayPlan plan = plan(TestSteps.coat("dye", "Dye", "hall", hours(2), 1).withKeepOut(reaching));
    assertThat(KeepOutPeriod.of(plan))
        .extracting(KeepOutPeriod::area, KeepOutPeriod::span)
        .containsExactly(tuple("hall", span(MONDAY, 7, 12)), tuple("Terrace", span(MONDAY, 7, 12)));
  }

  @Test
  void other_trades_are_not_told_to_come_in_for_less_than_an_hour_between_two_coats() {
    KeepOut untilDone = new KeepOut(Said.text("solvent"), Duration.ZERO);
    for (int minutes : List.of(20, 59, 60)) {
      Duration wait = Duration.ofMinutes(minutes);
      DayPlan plan =
          plan(
              TestSteps.coat("dye", "Dye", "hall", hours(1), 1).withKeepOut(untilDone),
              TestSteps.coat("again", "Again", "hall", hours(1), 1, StepWait.atLeast("dye", wait))
                  .withKeepOut(untilDone));
      assertThat(KeepOutPeriod.of(plan)).as("%s min", minutes).hasSize(minutes < 60 ? 1 : 2);
    }
  }

  @Test
  void times_to_keep_off_for_two_reasons_that_overlap_are_one_with_both_reasons() {
    DayPlan plan =
        plan(
            TestSteps.coat("dye", "Dye", "hall", hours(2), 1)
                .withKeepOut(new KeepOut(Said.text("solvent"), hours(3))),
            TestSteps.coat("seal", "Seal", "hall", hours(1), 1, StepWait.straightAfter("dye"))
                .withKeepOut(new KeepOut(Said.text("wet floor"), hours(4))));
    assertThat(KeepOutPeriod.of(plan))
        .containsExactly(
            new KeepOutPeriod(
                "hall",
                List.of(Said.text("solvent"), Said.text("wet floor")),
                span(MONDAY, 7, 14)));
  }

  private static DayPlan plan(WorkStep... tasks) {
    return ((Planned.Days) DayPlanner.plan(List.of(tasks), CREW_OF_TWO, MONDAY)).plan();
  }

  private static LocalDateTime start(DayPlan plan, String id) {
    return plan.step(id).orElseThrow().start();
  }

  private static TimeSpan span(LocalDate day, int from, int to) {
    return new TimeSpan(day.atTime(from, 0), day.atTime(to, 0));
  }

  private static Duration hours(int h) {
    return Duration.ofHours(h);
  }

  /** Nine hours from seven, three quarters of an hour of rest at a quarter past eleven. */
  private static final WorkingWeek WITH_REST =
      WorkingWeek.weekdays(2, LocalTime.of(7, 0), Duration.ofMinutes(555))
          .resting(Duration.ofMinutes(45));

  private static List<TimeSpan> spans(List<WorkStep> tasks, String id) {
    Planned planned = DayPlanner.plan(tasks, WITH_REST, LocalDate.of(2027, 1, 4));
    return ((Planned.Days) planned).plan().step(id).orElseThrow().spans();
  }

  private static TimeSpan on(int day, String from, String to) {
    LocalDate date = LocalDate.of(2027, 1, day);
    return new TimeSpan(date.atTime(LocalTime.parse(from)), date.atTime(LocalTime.parse(to)));
  }

  /** Five minutes before the rest was over the next step used to begin for who had not rested. */
  @Test
  void who_lays_a_coat_through_the_rest_of_the_day_rests_right_after_it() {
    List<WorkStep> tasks =
        List.of(
            TestSteps.pausing("before", "Before", "yard", Duration.ofHours(4), 2),
            TestSteps.coat("coat", "Coat", "hall", hours(1), 2, StepWait.straightAfter("before")),
            TestSteps.pausing(
                "next", "Next", "yard", hours(1), 2, StepWait.straightAfter("before")));
    assertThat(spans(tasks, "coat")).containsExactly(on(4, "11:00", "12:00"));
    assertThat(spans(tasks, "next")).containsExactly(on(4, "12:45", "13:45"));
  }

  @Test
  void a_coat_that_leaves_no_time_to_rest_behind_it_waits_for_the_next_day() {
    List<WorkStep> tasks =
        List.of(
            TestSteps.pausing("before", "Before", "hall", hours(4), 1),
            TestSteps.coat(
                "coat",
                "Coat",
                "hall",
                Duration.ofMinutes(280),
                1,
                StepWait.straightAfter("before")));
    assertThat(spans(tasks, "coat")).containsExactly(on(5, "07:00", "11:40"));
    assertThat(
            DayPlanner.plan(
                List.of(TestSteps.coat("long", "Long", "hall", hours(9), 1)),
                WITH_REST,
                LocalDate.of(2027, 1, 4)))
        .isInstanceOf(Planned.Refused.class);
  }

  @Test
  void film_is_pressed_on_the_day_it_is_laid_or_laid_the_next_morning() {
    List<WorkStep> tasks =
        List.of(
            TestSteps.pausing("before", "Before", "hall", Duration.ofMinutes(440), 2),
            TestSteps.film(
                StepKind.LAY_STENCIL,
                "lay",
                Duration.ofMinutes(50),
                StepWait.straightAfter("before")),
            TestSteps.film(
                StepKind.PRESS_EDGES,
                "press",
                Duration.ofMinutes(40),
                StepWait.straightAfter("lay")));
    assertThat(spans(tasks, "before").get(1).end()).isEqualTo(on(4, "15:05", "15:05").start());
    assertThat(spans(tasks, "lay")).containsExactly(on(5, "07:00", "07:50"));
    assertThat(spans(tasks, "press")).containsExactly(on(5, "07:50", "08:30"));
  }

  @Test
  void nobody_is_called_away_between_laying_film_and_pressing_it() {
    List<WorkStep> tasks =
        List.of(
            TestSteps.film(StepKind.LAY_STENCIL, "lay", Duration.ofMinutes(60)),
            TestSteps.coat("other", "Other", "yard", Duration.ofMinutes(180), 2),
            TestSteps.film(
                StepKind.PRESS_EDGES,
                "press",
                Duration.ofMinutes(30),
                StepWait.straightAfter("lay")));
    assertThat(spans(tasks, "press").get(0).start()).isEqualTo(spans(tasks, "lay").get(0).end());
  }

  /** Two days of laying: a night comes between, but no hour in which nobody goes on. */
  @Test
  void film_that_no_day_holds_is_laid_from_day_to_day_and_pressed_at_once() {
    List<WorkStep> tasks =
        List.of(
            TestSteps.film(StepKind.LAY_STENCIL, "lay", Duration.ofMinutes(900)),
            TestSteps.film(
                StepKind.PRESS_EDGES,
                "press",
                Duration.ofMinutes(60),
                StepWait.straightAfter("lay")));
    List<TimeSpan> lay = spans(tasks, "lay");
    assertThat(lay.get(0).start()).isEqualTo(on(4, "07:00", "07:00").start());
    assertThat(spans(tasks, "press").get(0).start()).isEqualTo(lay.get(lay.size() - 1).end());
  }

  @Test
  void work_is_begun_before_a_rest_that_it_goes_on_after() {
    List<WorkStep> tasks =
        List.of(
            TestSteps.pausing("before", "Before", "hall", Duration.ofMinutes(215), 2),
            TestSteps.pausing(
                "by hand",
                "By hand",
                "hall",
                Duration.ofMinutes(50),
                2,
                StepWait.straightAfter("before")));
    assertThat(spans(tasks, "by hand"))
        .as("forty minutes are left before the rest")
        .containsExactly(on(4, "10:35", "11:10"), on(4, "12:00", "12:15"));
  }

  /** Nobody may breathe both within a shift: then the night between them is the lesser evil. */
  @Test
  void film_that_a_shift_does_not_let_press_is_still_laid() {
    StepAir much = new StepAir(0.7, "", VapourReach.NOWHERE);
    WorkStep lay = TestSteps.film(StepKind.LAY_STENCIL, "lay", Duration.ofMinutes(60));
    WorkStep press =
        TestSteps.film(
            StepKind.PRESS_EDGES, "press", Duration.ofMinutes(30), StepWait.straightAfter("lay"));
    List<WorkStep> tasks = List.of(lay.in(much, lay.waits()), press.in(much, press.waits()));
    assertThat(spans(tasks, "lay")).containsExactly(on(4, "07:00", "08:00"));
    assertThat(spans(tasks, "press")).containsExactly(on(5, "07:00", "07:30"));
  }
}
