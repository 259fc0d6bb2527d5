package slabwright.work.days;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import slabwright.work.Said;
import slabwright.work.step.ToolKind;

/** Several floor areas at once: who does what, with which tools. */
class PeopleAndToolsProperties {
  private static final LocalDate DAY = LocalDate.of(2027, 3, 3);
  private static final List<JobTool> TOOLS =
      List.of(
          tool("grinder", ToolKind.FLOOR_GRINDER, 12),
          tool("small grinder 1", ToolKind.HAND_GRINDER, 4),
          tool("small grinder 2", ToolKind.HAND_GRINDER, 4),
          tool("small grinder 3", ToolKind.HAND_GRINDER, 4),
          tool("large", ToolKind.VACUUM, 13),
          tool("small", ToolKind.VACUUM, 4.5),
          tool("other small", ToolKind.VACUUM, 4.5));
  private static final JobMeans MEANS = new JobMeans(Optional.of(Set.of(0, 2)), Optional.of(TOOLS));
  private static final JobMeans ALL_MASKED = new JobMeans(Optional.empty(), Optional.of(TOOLS));

  @Property(tries = 300)
  void nobody_and_no_tool_is_on_two_steps_at_once_and_every_step_has_all_it_needs(
      @ForAll("jobs") List<WorkStep> tasks, @ForAll @IntRange(min = 3, max = 5) int people) {
    DayPlan plan = plan(tasks, people);
    for (ScheduledStep a : plan.steps()) {
      assertThat(a.who().persons()).hasSize(a.task().people()).doesNotHaveDuplicates();
      assertThat(a.who().persons()).allMatch(i -> i < people);
      for (ToolKind kind : a.task().type().tools()) {
        assertThat(a.who().tools().stream().filter(t -> t.kind() == kind))
            .hasSize(a.task().each(kind));
      }
      if (!a.task().air().protection().isEmpty()) {
        assertThat(a.who().persons()).isSubsetOf(0, 2);
      }
      for (ScheduledStep b : plan.steps()) {
        boolean meet = a.spans().stream().anyMatch(s -> b.spans().stream().anyMatch(s::meets));
        if (!a.equals(b) && meet) {
          assertThat(Collections.disjoint(a.who().persons(), b.who().persons())).isTrue();
          assertThat(Collections.disjoint(a.who().tools(), b.who().tools())).isTrue();
        }
      }
    }
  }

  @Property(tries = 250)
  void adding_a_person_never_lengthens_the_plan(@ForAll("jobs") List<WorkStep> tasks) {
    for (int n = 3; n < 6; n++) {
      assertThat(plan(tasks, n + 1).end()).isBeforeOrEqualTo(plan(tasks, n).end());
    }
  }

  @Example
  void one_floor_grinder_does_not_run_twice() {
    DayPlan plan =
        plan(
            List.of(
                TestSteps.pausing("a", "A", "hall", Duration.ofHours(2), 1),
                TestSteps.pausing("b", "B", "yard", Duration.ofHours(2), 1)),
            3);
    assertThat(plan.step("b").orElseThrow().start()).isEqualTo(plan.step("a").orElseThrow().end());
    assertThat(plan.step("b").orElseThrow().heldBy()).isEqualTo(new BindingConstraint.Tool("a"));
  }

  @Example
  void the_floor_grinder_gets_the_vacuum_that_pulls_what_it_asks_for() {
    DayPlan plan =
        plan(
            List.of(
                TestSteps.byHand("hand", "hall", Duration.ofHours(3), 2),
                TestSteps.pausing("machine", "M", "hall", Duration.ofHours(3), 1)),
            3);
    assertThat(plan.step("machine").orElseThrow().who().tools())
        .extracting(JobTool::name)
        .containsExactly("grinder", "large");
    assertThat(plan.step("hand").orElseThrow().who().tools())
        .extracting(JobTool::name)
        .containsExactly("small grinder 1", "small grinder 2", "small", "other small");
    assertThat(plan.step("hand").orElseThrow().start())
        .isEqualTo(plan.step("machine").orElseThrow().start());
  }

  @Example
  void who_walks_behind_the_grinder_does_not_grind_by_hand_while_others_can() {
    DayPlan plan =
        planned(
            List.of(
                TestSteps.pausing("first", "M", "hall", Duration.ofHours(3), 1),
                TestSteps.byHand(
                    "hand", "hall", Duration.ofHours(1), 2, StepWait.straightAfter("first")),
                TestSteps.pausing(
                    "second", "M", "hall", Duration.ofHours(3), 1, StepWait.straightAfter("hand"))),
            3,
            ALL_MASKED);
    assertThat(plan.step("second").orElseThrow().who().persons())
        .isEqualTo(plan.step("first").orElseThrow().who().persons())
        .doesNotContainAnyElementsOf(plan.step("hand").orElseThrow().who().persons());
  }

  @Example
  void a_fan_stays_where_it_blows_until_the_air_is_clear() {
    List<WorkStep> tasks =
        List.of(
            TestSteps.fanned("a", "hall", Duration.ofHours(1), Duration.ofHours(3)),
            TestSteps.fanned(
                "again", "hall", Duration.ofHours(1), Duration.ZERO, StepWait.straightAfter("a")),
            TestSteps.fanned("b", "yard", Duration.ofHours(1), Duration.ZERO));
    DayPlan one = planned(tasks, 3, fans(1));
    assertThat(one.step("again").orElseThrow().start())
        .isEqualTo(one.step("a").orElseThrow().end());
    ScheduledStep a = one.step("a").orElseThrow();
    ScheduledStep b = one.step("b").orElseThrow();
    assertThat(!b.start().isBefore(a.end().plusHours(3)) || !b.end().isAfter(a.start())).isTrue();
    DayPlan two = planned(tasks, 3, fans(2));
    assertThat(two.step("b").orElseThrow().start()).isEqualTo(two.step("a").orElseThrow().start());
  }

  private static JobMeans fans(int count) {
    List<JobTool> fans =
        IntStream.range(0, count).mapToObj(i -> tool("fan " + i, ToolKind.FAN, 0)).toList();
    return new JobMeans(Optional.empty(), Optional.of(fans));
  }

  @Example
  void a_tool_that_the_job_has_not_got_is_named() {
    JobMeans none = new JobMeans(Optional.empty(), Optional.of(List.of()));
    Planned planned =
        DayPlanner.plan(
            List.of(TestSteps.pausing("g", "Grind", "hall", Duration.ofHours(2), 1)),
            week(3),
            none,
            DAY,
            Map.of());
    assertThat(Said.of(((Planned.Refused) planned).sentence()))
        .contains("\"Grind\"")
        .contains("floor grinder")
        .contains("has 0");
  }

  private static JobTool tool(String name, ToolKind kind, double airflow) {
    return new JobTool(name, kind, kind.label(), OptionalDouble.of(airflow));
  }

  private static WorkingWeek week(int people) {
    return WorkingWeek.weekdays(people, LocalTime.of(7, 30), Duration.ofHours(8));
  }

  private static DayPlan plan(List<WorkStep> tasks, int people) {
    return planned(tasks, people, MEANS);
  }

  private static DayPlan planned(List<WorkStep> tasks, int people, JobMeans means) {
    return ((Planned.Days) DayPlanner.plan(tasks, week(people), means, DAY, Map.of())).plan();
  }

  private record Seed(int area, int kind, int minutes, int people, int opens) {}

  @Provide
  Arbitrary<List<WorkStep>> jobs() {
    Arbitrary<Seed> seed =
        Combinators.combine(
                Arbitraries.integers().between(0, 2),
                Arbitraries.integers().between(0, 3),
                Arbitraries.integers().between(1, 480),
                Arbitraries.integers().between(1, 3),
                Arbitraries.integers().between(0, 300))
            .as(Seed::new);
    return seed.list().ofMinSize(2).ofMaxSize(10).map(PeopleAndToolsProperties::tasks);
  }

  /** Each waits for the last one of its own floor area. */
  private static List<WorkStep> tasks(List<Seed> seeds) {
    List<WorkStep> tasks = new ArrayList<>();
    for (Seed s : seeds) {
      String area = "area " + s.area();
      Duration length = Duration.ofMinutes(s.minutes());
      StepWait[] waits =
          tasks.stream()
              .filter(t -> t.area().equals(area))
              .reduce((a, b) -> b)
              .map(t -> StepWait.atLeast(t.id(), Duration.ofMinutes(s.opens())))
              .stream()
              .toArray(StepWait[]::new);
      String id = "t" + tasks.size();
      tasks.add(
          switch (s.kind()) {
            case 0 -> TestSteps.pausing(id, id, area, length, 1, waits);
            case 1 -> TestSteps.byHand(id, area, length, Math.min(2, s.people()), waits);
            case 2 -> TestSteps.coat(id, id, area, length, s.people(), waits);
            default -> TestSteps.masked(id, area, length, Math.min(2, s.people()), waits);
          });
    }
    return tasks;
  }
}
