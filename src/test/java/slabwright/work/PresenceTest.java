package slabwright.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import slabwright.site.Site;
import slabwright.site.job.JobCrew;
import slabwright.work.book.BookSamples;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.TimeSpan;
import slabwright.work.step.AirEffect;
import slabwright.work.step.StepKind;
import slabwright.work.step.ToolKind;

/** The tram hall by the example book: 30 min to set up and to clean up, 45 min of breaks. */
class PresenceTest {
  private static final Site SITE = WorkSamples.tramHall();
  private static final WorkPlan PLAN = WorkSamples.plan(SITE);
  private static final DayPlan DAYS = PLAN.days().maybe().orElseThrow();
  private static final Presence HERE = PLAN.presence().maybe().orElseThrow();

  @Test
  void the_whole_crew_unloads_first_and_packs_up_last() {
    List<ScheduledStep> steps = DAYS.steps();
    assertThat(kind(steps.get(0))).isEqualTo(StepKind.SET_UP);
    assertThat(kind(steps.get(steps.size() - 1))).isEqualTo(StepKind.STRIKE);
    assertThat(steps.get(0).who().persons()).containsExactly(0, 1, 2);
    assertThat(steps.subList(1, steps.size()))
        .allSatisfy(s -> assertThat(s.start()).isAfterOrEqualTo(steps.get(0).end()));
  }

  @Test
  void between_two_grinding_passes_the_floor_is_vacuumed_and_walls_are_masked_before_spraying() {
    List<StepKind> hall =
        DAYS.steps().stream()
            .filter(s -> s.task().type().isOn("reading-hall"))
            .map(PresenceTest::kind)
            .distinct()
            .toList();
    assertThat(hall)
        .containsSubsequence(
            StepKind.METAL_PASS,
            StepKind.HEPA_PASS,
            StepKind.FINE_PASS,
            StepKind.MASK_WALLS,
            StepKind.COAT);
  }

  @Test
  void a_fan_is_set_up_before_the_first_solvent_and_nowhere_without_one() {
    List<ScheduledStep> steps =
        WorkSamples.plan(WorkSamples.solventHall()).days().maybe().orElseThrow().steps();
    ScheduledStep first =
        steps.stream()
            .filter(s -> s.task().type().tools().contains(ToolKind.FAN))
            .min(Comparator.comparing(ScheduledStep::start))
            .orElseThrow();
    assertThat(kind(first)).isEqualTo(StepKind.SET_UP_FAN);
    assertThat(steps.stream().filter(s -> kind(s) == StepKind.SET_UP_FAN)).hasSize(1);
    assertThat(steps)
        .filteredOn(s -> s.task().type().air() instanceof AirEffect.Vapour)
        .filteredOn(s -> s.task().type().tools().contains(ToolKind.FAN))
        .isNotEmpty()
        .allSatisfy(s -> assertThat(s.start()).isAfterOrEqualTo(first.end()))
        .anySatisfy(s -> assertThat(s.task().air().fan()).isPositive());
  }

  @Test
  void nobody_packs_up_over_the_coat_laid_last() {
    ScheduledStep strike = DAYS.steps().get(DAYS.steps().size() - 1);
    assertThat(PLAN.coatedLast()).isNotEmpty();
    PLAN.coatedLast()
        .forEach(a -> assertThat(Said.of(strike.task().name())).contains("outside").contains(a));
    assertThat(PLAN.outlook().checks())
        .filteredOn(c -> c.what().key().equals("work.work-plan.out-before-last-coat"))
        .hasSameSizeAs(PLAN.coatedLast());
  }

  @Test
  void steps_keep_off_the_time_for_setting_up_cleaning_up_and_the_break() {
    for (ScheduledStep s : DAYS.steps()) {
      for (TimeSpan t : s.spans()) {
        assertThat(t.start().toLocalTime()).isAfterOrEqualTo(LocalTime.of(7, 30));
        assertThat(t.end().toLocalTime()).isBeforeOrEqualTo(LocalTime.of(15, 30));
        boolean coat = kind(s) == StepKind.COAT || kind(s) == StepKind.MIST_COAT;
        TimeSpan rest =
            new TimeSpan(
                t.start().toLocalDate().atTime(DAYS.hours().rest().orElseThrow().from()),
                t.start().toLocalDate().atTime(LocalTime.of(11, 45)));
        boolean through = t.start().isBefore(rest.end()) && rest.start().isBefore(t.end());
        assertThat(through && !coat).as(s.task().id()).isFalse();
      }
    }
  }

  @Test
  void presence_counts_whole_days_and_hours_of_steps_hands_on_the_floor_only() {
    assertThat(HERE.unsaid()).isEmpty();
    assertThat(HERE.present()).isGreaterThan(HERE.steps());
    assertThat(HERE.steps()).isEqualTo(DAYS.personTime());
    Duration around =
        DAYS.steps().stream()
            .filter(s -> kind(s).isAround())
            .map(s -> s.task().length().multipliedBy(s.task().people()))
            .reduce(Duration.ZERO, Duration::plus);
    Duration all =
        DAYS.steps().stream()
            .map(s -> s.task().length().multipliedBy(s.task().people()))
            .reduce(Duration.ZERO, Duration::plus);
    assertThat(around).isGreaterThan(Duration.ofHours(8));
    assertThat(HERE.steps().plus(around)).isEqualTo(all);
    Presence.Day second = HERE.days().get(1);
    assertThat(second.span().start().toLocalTime()).isEqualTo(LocalTime.of(7, 0));
    assertThat(second.time())
        .isEqualTo(second.span().length().multipliedBy(second.persons().size()));
  }

  @Test
  void what_the_book_does_not_say_is_named_and_not_counted() {
    WorkPlan plan = WorkSamples.plan(SITE, WorkSamples.bookWith("set-up", "", "unloading", "?"));
    assertThat(plan.presence().maybe().orElseThrow().unsaid())
        .extracting(Said::of)
        .singleElement()
        .satisfies(s -> assertThat(s).contains("unloading"));
    assertThat(plan.days().maybe().orElseThrow().steps())
        .noneMatch(s -> kind(s) == StepKind.SET_UP);
  }

  @Test
  void one_more_person_never_makes_the_tram_hall_longer() {
    LocalDateTime before = LocalDateTime.MAX;
    for (int n = 1; n <= 4; n++) {
      WorkPlan plan = WorkSamples.plan(SITE, WorkSamples.bookWith("crew", "", "people", "" + n));
      LocalDateTime end = plan.days().maybe().orElseThrow().end();
      assertThat(end).as(n + " people").isBeforeOrEqualTo(before);
      before = end;
    }
  }

  @Test
  void who_grinds_over_four_hours_a_shift_is_told_whom_not_to_swap_with() {
    List<SilicaShift> shifts = SilicaShift.of(DAYS, Set.of("reading-hall"));
    assertThat(shifts).anyMatch(SilicaShift::isOver);
    for (SilicaShift s : shifts) {
      boolean over = s.tasks().compareTo(Duration.ofHours(4)) > 0;
      assertThat(s.respirator().isPresent()).isEqualTo(over && !s.byHand().isZero());
      assertThat(Said.of(s.swap())).contains(over ? "is over 4 h" : "may take over");
    }
  }

  private static StepKind kind(ScheduledStep s) {
    return s.task().type().kind();
  }

  @Test
  void a_tool_that_the_plan_miswrites_is_named_and_a_hyphen_is_no_mistake() {
    TreeMap<String, Integer> tools = new TreeMap<>(Map.of("vaccum", 1, "hand-grinder", 2));
    Site site = WorkSamples.tramHall();
    JobCrew crew = new JobCrew("", List.of(), tools);
    WorkPlan plan =
        WorkSamples.planSmall(site.withJob(site.job().withCrew(crew)), BookSamples.book());
    assertThat(plan.outlook().checks())
        .filteredOn(c -> c.what().key().equals("work.work-plan.unknown-tool"))
        .singleElement()
        .satisfies(c -> assertThat(Said.of(c.what())).contains("\"vaccum\"", "hand grinder"));
    assertThat(JobTools.of(BookSamples.book(), crew))
        .filteredOn(t -> t.kind() == ToolKind.HAND_GRINDER)
        .hasSize(2);
  }
}
