package slabwright.work.days;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** The planner against every plan there is, on jobs of up to four steps in full hours. */
class ShortestPlanProperties {
  private static final LocalDate DAY = LocalDate.of(2027, 3, 1);
  private static final int CREW = 2;
  private static final WorkingWeek HOURS =
      new WorkingWeek(
          CREW,
          LocalTime.of(0, 0),
          Duration.ofHours(ExhaustivePlanner.DAY),
          EnumSet.allOf(DayOfWeek.class));

  @Property(tries = 200)
  void no_plan_is_shorter(@ForAll("jobs") List<WorkStep> tasks) {
    DayPlan plan = ((Planned.Days) DayPlanner.plan(tasks, HOURS, DAY)).plan();
    int hours = (int) Duration.between(DAY.atStartOfDay(), plan.end()).toHours();
    assertThat(hours).isEqualTo(ExhaustivePlanner.shortest(tasks, CREW, hours / 24 + 1));
  }

  @Property(tries = 200)
  void the_same_steps_give_the_same_plan(@ForAll("jobs") List<WorkStep> tasks) {
    assertThat(DayPlanner.plan(tasks, HOURS, DAY)).isEqualTo(DayPlanner.plan(tasks, HOURS, DAY));
  }

  @Property(tries = 200)
  void starting_a_step_late_ends_the_job_no_earlier(
      @ForAll("jobs") List<WorkStep> tasks, @ForAll("delays") int hours) {
    DayPlan plan = ((Planned.Days) DayPlanner.plan(tasks, HOURS, DAY)).plan();
    for (WorkStep t : tasks) {
      LateStart.Result late = LateStart.of(plan, tasks, t.id(), Duration.ofHours(hours));
      assertThat(((LateStart.Result.Later) late).consequence().end().isNegative()).isFalse();
    }
  }

  @Provide
  Arbitrary<Integer> delays() {
    return Arbitraries.of(1, 2, 8, 24);
  }

  private record Seed(int hours, int people, boolean coat, int opens, int closes, int back) {}

  @Provide
  Arbitrary<List<WorkStep>> jobs() {
    Arbitrary<Seed> seed =
        Combinators.combine(
                Arbitraries.integers().between(1, ExhaustivePlanner.DAY),
                Arbitraries.integers().between(1, CREW),
                Arbitraries.of(true, false),
                Arbitraries.integers().between(0, 20),
                Arbitraries.integers().between(0, 30),
                Arbitraries.integers().between(1, 4))
            .as(Seed::new);
    return seed.list().ofMinSize(1).ofMaxSize(4).map(ShortestPlanProperties::tasks);
  }

  private static List<WorkStep> tasks(List<Seed> seeds) {
    List<WorkStep> tasks = new ArrayList<>();
    for (Seed s : seeds) {
      int i = tasks.size();
      StepWait[] waits =
          i < s.back() ? new StepWait[0] : new StepWait[] {wait(s, tasks.get(i - s.back()))};
      Duration length = Duration.ofHours(s.hours());
      WorkStep task =
          s.coat()
              ? TestSteps.coat("t" + i, "T" + i, "hall", length, s.people(), waits)
              : TestSteps.pausing("t" + i, "T" + i, "hall", length, s.people(), waits);
      tasks.add(task.withAbrading(Duration.ofHours(1)));
    }
    return tasks;
  }

  /** Only after a coat, which is done in one go, is there a longest recoat time. */
  private static StepWait wait(Seed s, WorkStep after) {
    Duration opens = Duration.ofHours(s.opens());
    return s.closes() > 24 || after.mayPause()
        ? StepWait.atLeast(after.id(), opens)
        : StepWait.window(after.id(), opens, opens.plusHours(s.closes()));
  }
}
