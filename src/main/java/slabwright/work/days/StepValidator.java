package slabwright.work.days;

import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What makes a list of steps impossible to plan, found before planning starts. */
final class StepValidator {
  /** A step longer than this is a slip of the pen. */
  private static final int LONGEST_DAYS = 250;

  private StepValidator() {}

  static Optional<String> findFault(List<WorkStep> tasks, WorkingWeek hours) {
    Set<String> seen = new HashSet<>();
    for (WorkStep task : tasks) {
      Optional<String> fault = faultOf(task, hours, seen);
      if (fault.isPresent()) {
        return fault;
      }
      seen.add(task.id());
    }
    return Optional.empty();
  }

  private static Optional<String> faultOf(WorkStep task, WorkingWeek hours, Set<String> seen) {
    if (seen.contains(task.id())) {
      return Optional.of("two steps are called \"%s\"; give each its own id".formatted(task.id()));
    }
    if (task.people() > hours.people()) {
      return Optional.of(
          "\"%s\" takes %d people and the crew has %d; add hands"
              .formatted(task.name(), task.people(), hours.people()));
    }
    if (!task.mayPause() && task.length().compareTo(hours.length()) > 0) {
      return Optional.of(
          "\"%s\" takes %s in one go and the day has %s; add hands or divide the floor at a joint"
              .formatted(task.name(), text(task.length()), text(hours.length())));
    }
    if (task.length().compareTo(hours.length().multipliedBy(LONGEST_DAYS)) > 0) {
      return Optional.of(
          "\"%s\" takes more than %d working days; check its rate in the shop book"
              .formatted(task.name(), LONGEST_DAYS));
    }
    return task.waits().stream()
        .filter(w -> !seen.contains(w.after()))
        .findFirst()
        .map(
            w ->
                "\"%s\" waits for \"%s\", which does not come before it"
                    .formatted(task.name(), w.after()));
  }

  private static String text(Duration d) {
    return "%d h %02d min".formatted(d.toHours(), d.toMinutesPart());
  }
}
