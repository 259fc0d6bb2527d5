package slabwright.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import slabwright.site.Site;
import slabwright.site.job.DayForecast;
import slabwright.work.book.BookSamples;
import slabwright.work.book.Figure;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.StepWait;
import slabwright.work.days.TimeSpan;
import slabwright.work.days.WorkStep;

/** Days that move away from the waits for as long as they can. */
class ForecastDryingTest {
  private static final int NIGHTS = 60;
  private static final String FIRST = "terrace/coat.1.outdoor-sealer.1";
  private static final LocalDate START = LocalDate.of(2026, 12, 7);

  @Test
  void a_coat_that_slips_a_day_at_each_plan_still_waits_by_the_night_it_is_dated_on() {
    Site tram = WorkSamples.tramHall();
    Site site = tram.withJob(tram.job().withForecast(colderEachDay()));
    AreaWorkPlan terrace = WorkSamples.plan(site, BookSamples.book()).area("terrace").orElseThrow();
    WeatherDays weather = new WeatherDays(site, terrace.floor(), terrace.coats());
    WorkPlan plan = WorkSamples.plan(site, BookSamples.book());
    DayPlan as = plan.outlook().order().maybe().orElseThrow();
    AtomicInteger plans = new AtomicInteger();
    ForecastDrying drying =
        new ForecastDrying(
            List.of(weather),
            steps ->
                Figure.known(on(START.plusDays(Math.min(plans.getAndIncrement(), 50)), as, steps)));
    ForecastDrying.Dated dated = drying.plan(plan.tasks().maybe().orElseThrow());
    ScheduledStep coat = dated.days().maybe().orElseThrow().step(FIRST).orElseThrow();
    Duration asked = weather.opens(coat.task(), coat.end()).orElseThrow();
    assertThat(coat.start().toLocalDate()).isEqualTo(START.plusDays(50));
    assertThat(waits(dated.steps()))
        .isNotEmpty()
        .allSatisfy(w -> assertThat(w.atLeast()).isGreaterThanOrEqualTo(asked));
  }

  private static List<StepWait> waits(List<WorkStep> steps) {
    return steps.stream()
        .flatMap(s -> s.waits().stream())
        .filter(w -> w.after().equals(FIRST) && !w.atLeast().isZero())
        .toList();
  }

  /** The same days, all moved so that the coat lies on one. */
  private static DayPlan on(LocalDate day, DayPlan as, List<WorkStep> steps) {
    Duration by = Duration.between(as.step(FIRST).orElseThrow().start(), day.atTime(9, 0));
    List<ScheduledStep> moved =
        as.steps().stream()
            .map(
                s ->
                    new ScheduledStep(
                        s.task(),
                        s.spans().stream()
                            .map(t -> new TimeSpan(t.start().plus(by), t.end().plus(by)))
                            .toList(),
                        s.heldBy(),
                        s.abradesFor(),
                        s.who()))
            .toList();
    return new DayPlan(as.hours(), as.means(), as.firstDay(), moved).withTasks(steps);
  }

  private static List<DayForecast> colderEachDay() {
    List<DayForecast> all = new ArrayList<>();
    for (int i = 0; i < NIGHTS; i++) {
      all.add(
          new DayForecast(
              START.plusDays(i),
              OptionalDouble.of(28 - 0.3 * i),
              OptionalDouble.of(30),
              OptionalDouble.of(10),
              OptionalDouble.of(0)));
    }
    return all;
  }
}
