package slabwright.work.days;

import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What makes a list of steps impossible to plan, found before planning starts. */
final class TaskCheck {
  private TaskCheck() {}

  static Optional<String> fault(List<Task> tasks, Hours hours) {
    Set<String> seen = new HashSet<>();
    for (Task task : tasks) {
      Optional<String> fault = faultOf(task, hours, seen);
      if (fault.isPresent()) {
        return fault;
      }
      seen.add(task.id());
    }
    return Optional.empty();
  }

  private static Optional<String> faultOf(Task task, Hours hours, Set<String> seen) {
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
