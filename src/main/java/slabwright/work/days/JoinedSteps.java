package slabwright.work.days;

import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slabwright.units.QuarterHour;
import slabwright.units.SortedCopy;

/**
 * Pairs of steps of which the second goes on where the first ends and is done by the same night,
 * where a day holds both; a longer pair goes on from day to day without a stop.
 *
 * @param next the second step by the id of the first
 */
record JoinedSteps(Map<String, WorkStep> next) {
  /** Every step that belongs to the one before and has to wait for nothing else. */
  static JoinedSteps of(List<WorkStep> steps) {
    Map<String, WorkStep> next = new HashMap<>();
    steps.stream()
        .filter(s -> s.type().kind().belongsToTheStepBefore() && s.waits().size() == 1)
        .filter(s -> s.waits().get(0).atLeast().isZero())
        .forEach(s -> next.put(s.waits().get(0).after(), s));
    return new JoinedSteps(SortedCopy.of(next));
  }

  Optional<WorkStep> after(String id) {
    return Optional.ofNullable(next.get(id));
  }

  /** Whether a step belongs to another one. */
  Optional<String> before(WorkStep step) {
    return Optional.of(step)
        .filter(s -> s.waits().size() == 1)
        .map(s -> s.waits().get(0).after())
        .filter(id -> after(id).filter(s -> s.id().equals(step.id())).isPresent());
  }

  /** When the first step may be tried next, if the second can't be done so; empty if it can. */
  static Optional<LocalDateTime> notBefore(
      WorkStep first, List<TimeSpan> one, List<TimeSpan> two, WorkStep second, WorkingWeek hours) {
    LocalDateTime start = one.get(0).start();
    if (!two.equals(hours.spread(second.length(), hours.next(end(one))))) {
      LocalDateTime soon = start.plus(QuarterHour.STEP);
      LocalDateTime justBefore = two.get(0).start().minus(first.length());
      return Optional.of(justBefore.isAfter(soon) ? justBefore : soon);
    }
    boolean late = !end(two).toLocalDate().equals(start.toLocalDate());
    LocalDateTime morning = hours.next(hours.end(start));
    return late && fitsADay(first, second, morning, hours)
        ? Optional.of(morning)
        : Optional.empty();
  }

  private static boolean fitsADay(
      WorkStep first, WorkStep second, LocalDateTime morning, WorkingWeek hours) {
    LocalDateTime done = end(hours.spread(first.length(), morning));
    LocalDateTime both = end(hours.spread(second.length(), hours.next(done)));
    return both.toLocalDate().equals(morning.toLocalDate());
  }

  private static LocalDateTime end(List<TimeSpan> spans) {
    return spans.get(spans.size() - 1).end();
  }
}
