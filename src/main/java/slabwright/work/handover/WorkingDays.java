package slabwright.work.handover;

import java.util.function.Predicate;
import slabwright.work.days.DayPlan;
import slabwright.work.days.WorkStep;

/** On how many days something is done. */
final class WorkingDays {
  private WorkingDays() {}

  static long of(DayPlan days, Predicate<WorkStep> which) {
    return days.steps().stream()
        .filter(s -> which.test(s.task()))
        .flatMap(s -> s.spans().stream())
        .map(s -> s.start().toLocalDate())
        .distinct()
        .count();
  }
}
