package slabwright.work.days;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import slabwright.units.QuarterHour;

class DayPlanProperties {
  private static final LocalDate DAY = LocalDate.of(2027, 3, 3);
  private static final WorkingWeek HOURS =
      WorkingWeek.weekdays(3, LocalTime.of(7, 30), Duration.ofHours(8));

  @Property(tries = 200)
  void no_step_starts_before_its_window_or_after_its_longest_recoat_without_abrading(
      @ForAll("jobs") List<WorkStep> tasks) {
    DayPlan plan = plan(tasks);
    for (ScheduledStep step : plan.steps()) {
      for (StepWait w : step.task().waits()) {
        LocalDateTime end = plan.step(w.after()).orElseThrow().end();
        assertThat(step.start()).isAfterOrEqualTo(end.plus(w.atLeast()));
        boolean abraded = plan.step(step.task().id() + ".abrade").isPresent();
        w.atMost()
            .filter(m -> !abraded)
            .ifPresent(m -> assertThat(step.start()).isBeforeOrEqualTo(end.plus(m)));
      }
    }
  }

  @Property(tries = 200)
  void the_crew_is_never_overdrawn_and_works_only_its_hours(@ForAll("jobs") List<WorkStep> tasks) {
    DayPlan plan = plan(tasks);
    for (ScheduledStep step : plan.steps()) {
      assertThat(step.worked()).isEqualTo(step.task().length());
      for (TimeSpan s : step.spans()) {
        assertThat(HOURS.next(s.start())).isEqualTo(s.start());
        assertThat(s.end()).isBeforeOrEqualTo(HOURS.end(s.start()));
        assertThat(peopleAt(plan, s.start())).isLessThanOrEqualTo(HOURS.people());
      }
    }
  }

  @Property(tries = 200)
  void nothing_is_begun_before_a_night_or_left_over_for_less_than_half_an_hour(
      @ForAll("jobs") List<WorkStep> tasks) {
    for (ScheduledStep step : plan(tasks).steps()) {
      if (step.spans().size() > 1) {
        assertThat(step.spans())
            .allSatisfy(s -> assertThat(s.length()).isGreaterThanOrEqualTo(Duration.ofMinutes(30)));
      }
    }
  }

  @Property(tries = 200)
  void a_crew_that_reads_quarter_hours_keeps_every_window(@ForAll("jobs") List<WorkStep> tasks) {
    DayPlan plan = plan(tasks);
    for (ScheduledStep step : plan.steps()) {
      boolean abraded = plan.step(step.task().id() + ".abrade").isPresent();
      for (StepWait w : step.task().waits()) {
        LocalDateTime end = plan.step(w.after()).orElseThrow().end();
        w.atMost()
            .filter(m -> !abraded)
            .ifPresent(
                m ->
                    assertThat(QuarterHour.up(step.start()))
                        .isBeforeOrEqualTo(QuarterHour.down(end.plus(m))));
      }
    }
  }

  /** Which piece of work a night may leave, so that a start before it has some slack of its own. */
  private static final Duration LEAST_PIECE = Duration.ofMinutes(30);

  @Property(tries = 200)
  void what_ends_the_job_is_critical_and_nothing_critical_can_wait(
      @ForAll("jobs") List<WorkStep> tasks) {
    DayPlan plan = plan(tasks);
    Set<String> critical = CriticalSteps.of(plan);
    plan.steps().stream()
        .filter(s -> s.end().equals(plan.end()) && !s.isAbrading() && !stoppedEarly(s))
        .forEach(s -> assertThat(critical).contains(s.task().id()));
    for (ScheduledStep s : plan.steps()) {
      boolean lastOfItsChain =
          plan.steps().stream()
              .flatMap(x -> x.task().waits().stream())
              .noneMatch(w -> w.after().equals(s.task().id()));
      boolean nobodyElseAfter =
          plan.steps().stream().noneMatch(x -> !x.equals(s) && x.end().isAfter(s.start()));
      if (lastOfItsChain && nobodyElseAfter && s.end().isBefore(plan.end())) {
        assertThat(critical).doesNotContain(s.task().id());
      }
    }
  }

  /**
   * Stopped before the day's end so that half an hour was left, it may start later and end then.
   */
  private static boolean stoppedEarly(ScheduledStep s) {
    List<TimeSpan> spans = s.spans();
    return spans.size() > 1
        && spans.get(spans.size() - 1).length().equals(LEAST_PIECE)
        && spans
            .get(spans.size() - 2)
            .end()
            .isBefore(HOURS.end(spans.get(spans.size() - 2).start()));
  }

  private static int peopleAt(DayPlan plan, LocalDateTime t) {
    return plan.steps().stream()
        .filter(
            s -> s.spans().stream().anyMatch(x -> !t.isBefore(x.start()) && t.isBefore(x.end())))
        .mapToInt(s -> s.task().people())
        .sum();
  }

  private static DayPlan plan(List<WorkStep> tasks) {
    return ((Planned.Days) DayPlanner.plan(tasks, HOURS, DAY)).plan();
  }

  private record Seed(int minutes, int people, boolean coat, int opens, int closes, int back) {}

  @Provide
  Arbitrary<List<WorkStep>> jobs() {
    Arbitrary<Seed> seed =
        Combinators.combine(
                Arbitraries.integers().between(1, 480),
                Arbitraries.integers().between(1, 3),
                Arbitraries.of(true, false),
                Arbitraries.integers().between(0, 1500),
                Arbitraries.integers().between(0, 3000),
                Arbitraries.integers().between(1, 3))
            .as(Seed::new);
    return seed.list().ofMinSize(1).ofMaxSize(9).map(DayPlanProperties::tasks);
  }

  private static List<WorkStep> tasks(List<Seed> seeds) {
    List<WorkStep> tasks = new ArrayList<>();
    for (Seed s : seeds) {
      int i = tasks.size();
      StepWait[] waits = i < s.back() ? new StepWait[0] : new StepWait[] {wait(s, i - s.back())};
      Duration length = Duration.ofMinutes(s.minutes());
      WorkStep task =
          s.coat()
              ? TestSteps.coat("t" + i, "T" + i, "hall", length, s.people(), waits)
              : TestSteps.pausing("t" + i, "T" + i, "hall", length, s.people(), waits);
      tasks.add(task.withAbrading(Duration.ofMinutes(30)));
    }
    return tasks;
  }

  private static StepWait wait(Seed s, int after) {
    Duration opens = Duration.ofMinutes(s.opens());
    return StepWait.window("t" + after, opens, opens.plusMinutes(s.closes()));
  }
}
