package slabwright.work.days;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.work.step.CoatNumber;
import slabwright.work.step.StepKind;

/**
 * The steps of a job in time order of their start.
 *
 * @param steps every step, abrading that a missed window made necessary included
 */
@RecordBuilder
public record DayPlan(
    WorkingWeek hours, JobMeans means, LocalDate firstDay, List<ScheduledStep> steps)
    implements DayPlanBuilder.With {
  public DayPlan {
    steps = steps.stream().sorted(Comparator.comparing(ScheduledStep::start)).toList();
  }

  public Optional<ScheduledStep> step(String id) {
    return steps.stream().filter(s -> s.task().id().equals(id)).findFirst();
  }

  /** A coat of a floor area's whole floor. */
  public Optional<ScheduledStep> coat(String areaId, CoatNumber coat) {
    return steps.stream()
        .filter(s -> s.task().type().isOn(areaId) && s.task().type().kind() == StepKind.COAT)
        .filter(s -> s.task().type().coat().filter(coat::equals).isPresent())
        .findFirst();
  }

  /** The abrading that a coat's missed window made necessary, by the coat's id. */
  public Optional<ScheduledStep> abradingFor(String coatId) {
    return steps.stream()
        .filter(ScheduledStep::isAbrading)
        .filter(s -> s.abradesFor().equals(coatId))
        .findFirst();
  }

  /** When the last step ends; the start of the first day when there is none. */
  public LocalDateTime end() {
    return last().map(ScheduledStep::end).orElse(firstDay.atTime(hours.from()));
  }

  private Optional<ScheduledStep> last() {
    return steps.stream().max(Comparator.comparing(ScheduledStep::end));
  }

  /** The last day before another on which the crew is there, else the day before it. */
  public LocalDate lastDayBefore(LocalDate day) {
    return steps.stream()
        .flatMap(s -> s.spans().stream())
        .map(s -> s.start().toLocalDate())
        .filter(day::isAfter)
        .max(Comparator.naturalOrder())
        .orElse(day.minusDays(1));
  }

  /** How many abrading steps missed windows made necessary. */
  public int abrading() {
    return (int) steps.stream().filter(ScheduledStep::isAbrading).count();
  }

  /** The same days with each step replaced by the task of its id, where there is one. */
  public DayPlan withTasks(List<WorkStep> tasks) {
    List<ScheduledStep> changed =
        steps.stream()
            .map(
                p ->
                    tasks.stream()
                        .filter(t -> t.id().equals(p.task().id()))
                        .findFirst()
                        .map(p::withTask)
                        .orElse(p))
            .toList();
    return withSteps(changed);
  }

  /** When the step after {@code id} may start at the earliest, by its wait alone. */
  public Optional<LocalDateTime> earliestNext(String id) {
    return step(id)
        .flatMap(
            done ->
                steps.stream()
                    .flatMap(
                        s ->
                            s.task().waits().stream()
                                .filter(w -> w.after().equals(id))
                                .map(w -> KeepOutPeriod.next(done, s, w)))
                    .min(Comparator.naturalOrder()));
  }

  /** Hours of people with their hands on the floor; setting up, masking and the like left out. */
  public Duration personTime() {
    return steps.stream()
        .filter(s -> !s.task().type().kind().isAround())
        .map(s -> s.task().length().multipliedBy(s.task().people()))
        .reduce(Duration.ZERO, Duration::plus);
  }
}
