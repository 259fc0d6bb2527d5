package slabwright.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import slabwright.site.Site;
import slabwright.work.book.BookSamples;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.step.AirEffect;
import slabwright.work.step.StepKind;

/** Who is at the gas meter while solvent is about in the tram hall. */
class MeterWatchTest {
  private static final Site SITE = WorkSamples.tramHall();
  private static final WorkPlan PLAN = WorkSamples.plan(SITE);
  private static final DayPlan DAYS = PLAN.days().maybe().orElseThrow();

  private static List<ScheduledStep> vapour(DayPlan days) {
    return days.steps().stream()
        .filter(s -> s.task().type().air() instanceof AirEffect.Vapour)
        .toList();
  }

  private static WorkPlan withPeople(int people) {
    return WorkSamples.plan(SITE, BookSamples.book().withPeople(people));
  }

  @Test
  void whoever_mists_is_never_the_one_who_reads_and_no_other_step_holds_the_reader() {
    assertThat(vapour(DAYS)).hasSizeGreaterThan(7);
    for (ScheduledStep s : vapour(DAYS)) {
      MeterWatch watch = MeterWatch.of(DAYS, s);
      assertThat(watch.standing()).as(s.task().id()).isEqualTo(MeterWatch.Standing.FREE);
      int reader = watch.person().orElseThrow();
      assertThat(s.who().persons()).doesNotContain(reader);
      assertThat(DAYS.steps().stream().filter(o -> o.who().persons().contains(reader)))
          .noneMatch(o -> o.spans().stream().anyMatch(t -> s.spans().stream().anyMatch(t::meets)));
    }
  }

  @Test
  void who_reads_is_paid_for_being_there() {
    Presence here = PLAN.presence().maybe().orElseThrow();
    for (ScheduledStep s : vapour(DAYS)) {
      int reader = MeterWatch.of(DAYS, s).person().orElseThrow();
      assertThat(here.days())
          .filteredOn(d -> d.span().meets(s.spans().get(0)))
          .allMatch(d -> d.persons().contains(reader));
    }
  }

  @Test
  void a_crew_of_one_has_nobody_at_the_meter() {
    DayPlan one = withPeople(1).days().maybe().orElseThrow();
    assertThat(vapour(one)).isNotEmpty();
    assertThat(vapour(one).stream().map(s -> MeterWatch.of(one, s)).distinct())
        .containsExactly(new MeterWatch(MeterWatch.Standing.NOBODY, OptionalInt.empty()));
  }

  @Test
  void a_sample_panel_of_solvent_dyes_has_somebody_at_the_meter_too() {
    ScheduledStep panel =
        DAYS.steps().stream()
            .filter(s -> s.task().type().kind() == StepKind.SAMPLE_PANEL)
            .findFirst()
            .orElseThrow();
    assertThat(MeterWatch.isAskedFor(PLAN, panel.task().type())).isTrue();
    assertThat(MeterWatch.of(DAYS, panel).standing()).isEqualTo(MeterWatch.Standing.FREE);
  }
}
