package slabwright.work;

import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import slabwright.work.book.Figure;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.StepAir;
import slabwright.work.days.StepWait;
import slabwright.work.days.VapourReach;
import slabwright.work.days.WetFilm;
import slabwright.work.days.WorkStep;

/**
 * Lets what follows a coat outdoors wait as long as the coat dries on the day that it is laid on.
 * The day hangs on the waits and the waits on the day: planned over and over until both agree. They
 * always do in the end: after {@value #FREELY} plans a wait is only ever drawn out, to one of as
 * many lengths as the forecast has nights, so that no coat is dated by another day's drying.
 */
final class ForecastDrying {
  private static final int FREELY = 5;

  private final List<WeatherDays> floors;
  private final Function<List<WorkStep>, Figure<DayPlan>> planner;

  /**
   * For the floors of one site.
   *
   * @param planner gives steps their days
   */
  ForecastDrying(List<WeatherDays> floors, Function<List<WorkStep>, Figure<DayPlan>> planner) {
    this.floors = floors.stream().filter(WeatherDays::count).toList();
    this.planner = planner;
  }

  /** Steps and their days. */
  record Dated(List<WorkStep> steps, Figure<DayPlan> days) {
    /** The step as it is here, where it is here. */
    WorkStep latest(WorkStep step) {
      return steps.stream().filter(s -> s.id().equals(step.id())).findFirst().orElse(step);
    }
  }

  Dated plan(List<WorkStep> tasks) {
    List<WorkStep> steps = tasks;
    Figure<DayPlan> days = planner.apply(steps);
    boolean agree = floors.isEmpty();
    for (int i = 0; !agree && days.isKnown(); i++) {
      List<WorkStep> next = drying(steps, days.maybe().orElseThrow(), i >= FREELY);
      agree = next.equals(steps);
      steps = next;
      days = agree ? days : planner.apply(steps);
    }
    return new Dated(steps, days);
  }

  private List<WorkStep> drying(List<WorkStep> steps, DayPlan days, boolean onlyLonger) {
    Map<String, Duration> dry = new HashMap<>();
    for (WorkStep s : steps) {
      opens(s, days).ifPresent(t -> dry.put(s.id(), t));
    }
    return steps.stream().map(s -> waiting(s, dry, onlyLonger)).toList();
  }

  private Optional<Duration> opens(WorkStep step, DayPlan days) {
    return floors.stream()
        .filter(f -> step.type().isOn(f.floor().area().id()))
        .findFirst()
        .flatMap(f -> days.step(step.id()).map(ScheduledStep::end).flatMap(t -> f.opens(step, t)))
        .map(t -> Duration.ofMinutes((t.toSeconds() + 59) / 60));
  }

  private static WorkStep waiting(WorkStep step, Map<String, Duration> dry, boolean onlyLonger) {
    List<StepWait> waits =
        step.waits().stream()
            .map(
                w ->
                    Optional.ofNullable(dry.get(w.after()))
                        .filter(t -> !w.atLeast().isZero())
                        .map(t -> longer(w, t, onlyLonger))
                        .orElse(w))
            .toList();
    return step.in(vapour(step, dry).wet(wet(step, dry, onlyLonger)), waits);
  }

  /**
   * What no longer waits for drying, as the next section of the same coat, goes on so. A coat is on
   * no day on which it dries longer than its window is open ({@link WeatherDays#keptOff}): the
   * window stays.
   */
  private static StepWait longer(StepWait w, Duration dry, boolean onlyLonger) {
    Duration opens = onlyLonger && w.atLeast().compareTo(dry) > 0 ? w.atLeast() : dry;
    return new StepWait(w.after(), opens, w.atMost());
  }

  /** A coat takes dust as long as it dries on its day. */
  private static WetFilm wet(WorkStep step, Map<String, Duration> dry, boolean onlyLonger) {
    WetFilm film = step.air().wet();
    Duration time = dry.getOrDefault(step.id(), film.after());
    return onlyLonger && film.after().compareTo(time) > 0 ? film : film.dryAfter(time);
  }

  /** Vapour outdoors counts until the coat may be recoated. */
  private static StepAir vapour(WorkStep step, Map<String, Duration> dry) {
    VapourReach reach = step.air().vapour();
    Duration until = dry.getOrDefault(step.id(), Duration.ZERO);
    return until.compareTo(reach.after()) > 0 && !reach.areas().isEmpty()
        ? step.air().reaching(new VapourReach(reach.areas(), until, reach.closes()))
        : step.air();
  }
}
