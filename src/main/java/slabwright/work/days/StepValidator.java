package slabwright.work.days;

import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slabwright.units.Message;

/** What makes a list of steps impossible to plan, found before planning starts. */
final class StepValidator {
  /** A step longer than this is a slip of the pen. */
  private static final int LONGEST_DAYS = 250;

  private StepValidator() {}

  static Optional<Message> findFault(List<WorkStep> tasks, WorkingWeek hours, JobMeans means) {
    Set<String> seen = new HashSet<>();
    for (WorkStep task : tasks) {
      Optional<Message> fault = faultOf(task, hours, seen).or(() -> lacking(task, hours, means));
      if (fault.isPresent()) {
        return fault;
      }
      seen.add(task.id());
    }
    return Optional.empty();
  }

  private static Optional<Message> faultOf(WorkStep task, WorkingWeek hours, Set<String> seen) {
    if (seen.contains(task.id())) {
      return Optional.of(Message.of("work.step-validator.two-steps-are-called-give", task.id()));
    }
    if (task.people() > hours.people()) {
      return Optional.of(
          Message.of(
              "work.step-validator.takes-people-and-the-crew",
              task.name(),
              task.people(),
              hours.people()));
    }
    if (!task.mayPause() && task.length().compareTo(hours.inOneGo()) > 0) {
      return Optional.of(
          Message.of(
              "work.step-validator.takes-in-one-go-and",
              task.name(),
              text(task.length()),
              text(hours.inOneGo())));
    }
    if (task.length().compareTo(hours.length().multipliedBy(LONGEST_DAYS)) > 0) {
      return Optional.of(
          Message.of(
              "work.step-validator.takes-more-than-working-days", task.name(), LONGEST_DAYS));
    }
    return task.waits().stream()
        .filter(w -> !seen.contains(w.after()))
        .findFirst()
        .map(
            w ->
                Message.of("work.step-validator.waits-for-which-does-not", task.name(), w.after()));
  }

  /** Masks or tools that the job has too few of for a step. */
  private static Optional<Message> lacking(WorkStep task, WorkingWeek hours, JobMeans means) {
    int masks = means.masks(hours.people());
    if (!task.air().protection().isEmpty() && task.people() > masks) {
      return Optional.of(
          Message.of("work.step-validator.masks", task.name(), task.people(), masks));
    }
    if (means.tools().isEmpty()) {
      return Optional.empty();
    }
    return task.type().tools().stream()
        .sorted()
        .filter(k -> means.suitable(task, k).size() < task.each(k))
        .findFirst()
        .map(
            k ->
                Message.of(
                    "work.step-validator.tools",
                    task.name(),
                    task.each(k),
                    k.label(),
                    means.suitable(task, k).size()));
  }

  private static Message text(Duration d) {
    return Message.of("work.step-validator.hours-and-minutes", d.toHours(), d.toMinutesPart());
  }
}
