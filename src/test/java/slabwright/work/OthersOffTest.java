package slabwright.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.site.Site;
import slabwright.work.days.DayPlan;
import slabwright.work.days.KeepOut;
import slabwright.work.days.KeepOutPeriod;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.StepWait;
import slabwright.work.step.StepKind;

/** Whom the tram hall keeps off which floor while solvent is laid. */
class OthersOffTest {
  private static final Site SITE = WorkSamples.tramHall();
  private static final WorkPlan PLAN = WorkSamples.plan(SITE);
  private static final DayPlan DAYS = PLAN.days().maybe().orElseThrow();

  private static List<ScheduledStep> solvent(String area) {
    return DAYS.steps().stream()
        .filter(s -> s.task().type().isOn(area))
        .filter(s -> MeterWatch.isAskedFor(PLAN, s.task().type()))
        .toList();
  }

  @Test
  void every_step_at_which_the_gas_meter_is_read_keeps_others_off_and_no_other_does() {
    assertThat(DAYS.steps())
        .allSatisfy(
            s ->
                assertThat(s.task().keepOut().isPresent())
                    .as(s.task().id())
                    .isEqualTo(MeterWatch.isAskedFor(PLAN, s.task().type())));
    assertThat(solvent("reading-hall"))
        .anyMatch(s -> s.task().type().kind() == StepKind.SAMPLE_PANEL);
    assertThat(solvent("terrace")).hasSize(2);
  }

  @Test
  void nobody_comes_back_before_what_was_laid_is_dry() {
    for (ScheduledStep next : DAYS.steps()) {
      for (StepWait w : next.task().waits()) {
        DAYS.step(w.after())
            .flatMap(s -> s.task().keepOut())
            .ifPresent(
                k -> assertThat(k.after()).as(w.after()).isGreaterThanOrEqualTo(w.atLeast()));
      }
    }
    assertThat(solvent("terrace"))
        .allSatisfy(
            s ->
                assertThat(s.task().keepOut().map(KeepOut::after).orElse(Duration.ZERO))
                    .isGreaterThan(Duration.ofHours(4)));
  }

  @Test
  void the_hall_behind_the_terraces_doors_is_kept_off_with_it() {
    List<KeepOutPeriod> hall =
        KeepOutPeriod.of(DAYS).stream().filter(k -> k.area().equals("Reading hall")).toList();
    for (ScheduledStep s : solvent("terrace")) {
      LocalDateTime clear = s.end().plus(s.task().keepOut().orElseThrow().after());
      assertThat(hall)
          .anyMatch(k -> !k.span().start().isAfter(s.start()) && !k.span().end().isBefore(clear));
    }
  }

  @Test
  void outdoors_others_are_told_of_the_ground_beside_the_floor_too() {
    assertThat(solvent("terrace"))
        .allSatisfy(
            s ->
                assertThat(Said.of(s.task().keepOut().orElseThrow().reason()))
                    .contains("beside it")
                    .contains("air intakes"));
  }
}
