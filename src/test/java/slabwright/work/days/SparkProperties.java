package slabwright.work.days;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import slabwright.work.step.AirEffect;

/**
 * Two floor areas with a shared doorway: grinding in the one, solvent or a wet coat in the other.
 */
class SparkProperties {
  private static final LocalDate DAY = LocalDate.of(2027, 3, 3);
  private static final WorkingWeek HOURS =
      WorkingWeek.weekdays(3, LocalTime.of(7, 30), Duration.ofHours(8));

  @Property(tries = 200)
  void areas_with_a_shared_door_never_spark_nor_raise_dust_beside_vapour_and_wet_coats(
      @ForAll("jobs") List<WorkStep> tasks) {
    DayPlan plan = plan(tasks);
    assertThat(plan.steps()).hasSameSizeAs(tasks);
    assertThat(meetings(plan)).isEmpty();
    assertThat(dustInWetCoats(plan)).isEmpty();
  }

  @Example
  void grinding_waits_until_the_coat_beside_is_dry_and_says_that_it_is_for_the_dust() {
    WetFilm wet = new WetFilm(List.of("hall", "yard"), Duration.ofHours(3));
    WorkStep coat = TestSteps.wet("coat", "hall", Duration.ofHours(2), wet);
    DayPlan plan = plan(List.of(coat, grind("grind", "yard", Duration.ofHours(1))));
    assertThat(dustInWetCoats(plan)).isEmpty();
    assertThat(plan.steps().stream().map(ScheduledStep::heldBy))
        .hasAtLeastOneElementOfType(BindingConstraint.Dust.class);
  }

  @Example
  void what_raises_no_dust_goes_on_beside_a_wet_coat() {
    WetFilm wet = new WetFilm(List.of("hall", "yard"), Duration.ofHours(3));
    WorkStep coat = TestSteps.wet("coat", "hall", Duration.ofHours(2), wet);
    DayPlan plan =
        plan(List.of(coat, TestSteps.coat("other", "other", "yard", Duration.ofHours(1), 1)));
    assertThat(plan.step("other").orElseThrow().start())
        .isEqualTo(plan.step("coat").orElseThrow().start());
  }

  @Example
  void grinding_waits_until_the_vapour_beside_is_gone() {
    WorkStep coat =
        TestSteps.solvent("coat", "hall", Duration.ofHours(2), beside("yard", Duration.ofHours(3)));
    DayPlan plan = plan(List.of(coat, grind("grind", "yard", Duration.ofHours(1))));
    ScheduledStep grind = plan.step("grind").orElseThrow();
    ScheduledStep laid = plan.step("coat").orElseThrow();
    assertThat(grind.end().isAfter(laid.start()) && grind.start().isBefore(laid.end().plusHours(3)))
        .isFalse();
    assertThat(plan.steps().stream().map(ScheduledStep::heldBy))
        .hasAtLeastOneElementOfType(BindingConstraint.Spark.class);
  }

  @Example
  void solvent_waits_until_the_grinding_beside_is_done() {
    WorkStep coat =
        TestSteps.solvent("coat", "hall", Duration.ofHours(2), beside("yard", Duration.ZERO));
    DayPlan plan = plan(List.of(grind("grind", "yard", Duration.ofHours(12)), coat));
    assertThat(meetings(plan)).isEmpty();
    assertThat(plan.step("coat").orElseThrow().start()).isNotEqualTo(DAY.atTime(9, 0));
  }

  @Example
  void without_a_shared_door_both_run_at_the_same_time() {
    WorkStep coat = TestSteps.solvent("coat", "hall", Duration.ofHours(2), VapourReach.NOWHERE);
    DayPlan plan = plan(List.of(coat, grind("grind", "yard", Duration.ofHours(1))));
    assertThat(plan.step("coat").orElseThrow().start())
        .isEqualTo(plan.step("grind").orElseThrow().start());
  }

  @Example
  void a_late_start_keeps_them_apart_too() {
    List<WorkStep> tasks =
        List.of(
            grind("grind", "yard", Duration.ofHours(1)),
            TestSteps.solvent(
                "coat", "hall", Duration.ofHours(2), beside("yard", Duration.ofHours(1))));
    DayPlan plan = plan(tasks);
    LateStart.Result late = LateStart.of(plan, tasks, "grind", Duration.ofHours(2));
    assertThat(meetings(((LateStart.Result.Later) late).consequence().late())).isEmpty();
  }

  /** Steps that spark while vapour of another step is in their floor area. */
  private static List<String> meetings(DayPlan plan) {
    List<String> all = new ArrayList<>();
    for (ScheduledStep laid : plan.steps()) {
      VapourReach reach = laid.task().air().vapour();
      LocalDateTime clear = laid.end().plus(reach.after());
      for (ScheduledStep other : plan.steps()) {
        boolean beside = reach.areas().contains(other.task().type().areaId());
        boolean meets =
            other.spans().stream()
                .anyMatch(s -> s.start().isBefore(clear) && laid.start().isBefore(s.end()));
        if (beside && meets && !other.task().type().tools().isEmpty()) {
          all.add(laid.task().id() + " and " + other.task().id());
        }
      }
    }
    return all;
  }

  /** Steps that raise dust where a coat of another step is wet. */
  private static List<String> dustInWetCoats(DayPlan plan) {
    List<String> all = new ArrayList<>();
    for (ScheduledStep laid : plan.steps()) {
      WetFilm film = laid.task().air().wet();
      LocalDateTime dry = laid.end().plus(film.after());
      plan.steps().stream()
          .filter(s -> s.task().type().air() instanceof AirEffect.Dust)
          .filter(s -> film.areas().contains(s.task().type().areaId()))
          .filter(
              s ->
                  s.spans().stream()
                      .anyMatch(x -> x.start().isBefore(dry) && laid.start().isBefore(x.end())))
          .forEach(s -> all.add(laid.task().id() + " and " + s.task().id()));
    }
    return all;
  }

  private static DayPlan plan(List<WorkStep> tasks) {
    return ((Planned.Days) DayPlanner.plan(tasks, HOURS, DAY)).plan();
  }

  private static VapourReach beside(String area, Duration after) {
    return new VapourReach(List.of(area), after);
  }

  private static WorkStep grind(String id, String area, Duration length, StepWait... waits) {
    return TestSteps.pausing(id, id, area, length, 1, waits);
  }

  private enum Work {
    GRIND,
    SOLVENT,
    COAT
  }

  private record Seed(boolean hall, Work work, int minutes, int after) {}

  @Provide
  Arbitrary<List<WorkStep>> jobs() {
    Arbitrary<Seed> seed =
        Combinators.combine(
                Arbitraries.of(true, false),
                Arbitraries.of(Work.class),
                Arbitraries.integers().between(1, 480),
                Arbitraries.integers().between(0, 1500))
            .as(Seed::new);
    return seed.list().ofMinSize(2).ofMaxSize(6).map(SparkProperties::tasks);
  }

  /** Each waits for the one before it on its own floor area, so that orders are to be found. */
  private static List<WorkStep> tasks(List<Seed> seeds) {
    List<WorkStep> tasks = new ArrayList<>();
    for (Seed s : seeds) {
      String area = s.hall() ? "hall" : "yard";
      Duration length = Duration.ofMinutes(s.minutes());
      StepWait[] waits =
          tasks.stream()
              .filter(t -> t.area().equals(area))
              .map(t -> StepWait.straightAfter(t.id()))
              .toArray(StepWait[]::new);
      String id = "t" + tasks.size();
      VapourReach reach = beside(s.hall() ? "yard" : "hall", Duration.ofMinutes(s.after()));
      WetFilm wet = new WetFilm(List.of("hall", "yard"), Duration.ofMinutes(s.after()));
      tasks.add(
          switch (s.work()) {
            case SOLVENT -> TestSteps.solvent(id, area, length, reach, waits);
            case COAT -> TestSteps.wet(id, area, length, wet, waits);
            case GRIND -> grind(id, area, length, waits);
          });
    }
    return tasks;
  }
}
