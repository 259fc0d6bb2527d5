package slabwright.work.days;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How early a job can end at best: no plan ends before the steps would with hands without number
 * and no window to miss, nor before the crew has put in all its hours.
 */
final class ScheduleLowerBound {
  private final List<WorkStep> tasks;
  private final Map<String, Duration> tails = new HashMap<>();
  private final LocalDateTime end;

  ScheduleLowerBound(
      List<WorkStep> tasks,
      WorkingWeek hours,
      JobMeans means,
      LocalDate firstDay,
      Map<String, LocalDateTime> notBefore) {
    this.tasks = tasks;
    LocalDateTime waits = withoutLimit(new CrewCalendar(hours, means), hours, firstDay, notBefore);
    LocalDateTime work = byHours(hours, firstDay);
    this.end = waits.isAfter(work) ? waits : work;
    tails();
  }

  LocalDateTime end() {
    return end;
  }

  /** The least time from a step's start to the job's end, nights not counted. */
  Duration tail(WorkStep task) {
    return tails.get(task.id());
  }

  private LocalDateTime withoutLimit(
      CrewCalendar alone,
      WorkingWeek hours,
      LocalDate firstDay,
      Map<String, LocalDateTime> notBefore) {
    Map<String, LocalDateTime> ends = new HashMap<>();
    LocalDateTime start = firstDay.atTime(hours.from());
    LocalDateTime last = start;
    for (WorkStep t : tasks) {
      LocalDateTime ready = later(start, notBefore.getOrDefault(t.id(), start));
      for (StepWait w : t.waits()) {
        ready = later(ready, ends.get(w.after()).plus(w.atLeast()));
      }
      List<TimeSpan> spans = alone.find(t, ready).spans();
      ends.put(t.id(), spans.get(spans.size() - 1).end());
      last = later(last, ends.get(t.id()));
    }
    return last;
  }

  private LocalDateTime byHours(WorkingWeek hours, LocalDate firstDay) {
    Duration all =
        tasks.stream()
            .map(t -> t.length().multipliedBy(t.people()))
            .reduce(Duration.ZERO, Duration::plus);
    return hours.soonest(all.dividedBy(hours.people()), firstDay.atTime(hours.from()));
  }

  private void tails() {
    for (int i = tasks.size() - 1; i >= 0; i--) {
      WorkStep t = tasks.get(i);
      Duration after = Duration.ZERO;
      for (WorkStep next : tasks.subList(i + 1, tasks.size())) {
        for (StepWait w : next.waits()) {
          if (w.after().equals(t.id())) {
            Duration way = w.atLeast().plus(tails.get(next.id()));
            after = way.compareTo(after) > 0 ? way : after;
          }
        }
      }
      tails.put(t.id(), t.length().plus(after));
    }
  }

  private static LocalDateTime later(LocalDateTime a, LocalDateTime b) {
    return a.isAfter(b) ? a : b;
  }
}
