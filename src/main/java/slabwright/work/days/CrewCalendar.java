package slabwright.work.days;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Who is busy when; finds the first stretch with enough free people. One planning run's own. */
final class CrewCalendar {
  /** How long how many people are wanted, and whether they may go on the next morning. */
  record Demand(Duration length, int people, boolean mayPause) {}

  private record Busy(String id, TimeSpan span, int people) {}

  /** A found place and, when the crew was the reason for it, the step that kept them. */
  record Slot(List<TimeSpan> spans, Optional<String> waitedFor) {}

  private final WorkingWeek hours;
  private final List<Busy> busy = new ArrayList<>();

  CrewCalendar(WorkingWeek hours) {
    this.hours = hours;
  }

  void reserve(WorkStep task, List<TimeSpan> spans) {
    spans.forEach(s -> busy.add(new Busy(task.id(), s, task.people())));
  }

  /** How much has been taken so far, to go {@link #rollBack} to. */
  int reservations() {
    return busy.size();
  }

  void rollBack(int mark) {
    busy.subList(mark, busy.size()).clear();
  }

  /** The first place at or after {@code earliest}; a step that may not pause fits one day. */
  Slot find(WorkStep task, LocalDateTime earliest) {
    return find(new Demand(task.length(), task.people(), task.mayPause()), earliest);
  }

  /** The first place of work that is no step of the plan. */
  Slot find(Demand task, LocalDateTime earliest) {
    LocalDateTime at = hours.next(earliest);
    Optional<String> waitedFor = Optional.empty();
    while (true) {
      List<TimeSpan> spans = spread(task.length(), at);
      if (spans.size() > 1 && !task.mayPause()) {
        at = hours.next(hours.end(at));
        continue;
      }
      Optional<Busy> block = firstBlock(spans, task.people());
      if (block.isEmpty()) {
        return new Slot(spans, waitedFor);
      }
      waitedFor = Optional.of(block.get().id());
      at = hours.next(block.get().span().end());
    }
  }

  private List<TimeSpan> spread(Duration length, LocalDateTime from) {
    List<TimeSpan> spans = new ArrayList<>();
    Duration left = length;
    LocalDateTime at = from;
    while (true) {
      Duration today = Duration.between(at, hours.end(at));
      if (left.compareTo(today) <= 0) {
        spans.add(new TimeSpan(at, at.plus(left)));
        return spans;
      }
      spans.add(new TimeSpan(at, hours.end(at)));
      left = left.minus(today);
      at = hours.next(hours.end(at));
    }
  }

  /** Of the work that leaves too few people somewhere in the spans, what ends first. */
  private Optional<Busy> firstBlock(List<TimeSpan> spans, int people) {
    return spans.stream()
        .flatMap(s -> blocksOf(s, people).stream())
        .min(Comparator.comparing((Busy b) -> b.span().end()));
  }

  private List<Busy> blocksOf(TimeSpan span, int people) {
    List<Busy> meeting = busy.stream().filter(b -> b.span().meets(span)).toList();
    return meeting.stream()
        .filter(
            b ->
                takenWhen(later(b.span().start(), span.start()), meeting) + people > hours.people())
        .flatMap(b -> runningAt(later(b.span().start(), span.start()), meeting).stream())
        .toList();
  }

  private static int takenWhen(LocalDateTime t, List<Busy> meeting) {
    return runningAt(t, meeting).stream().mapToInt(Busy::people).sum();
  }

  private static List<Busy> runningAt(LocalDateTime t, List<Busy> meeting) {
    return meeting.stream()
        .filter(b -> !t.isBefore(b.span().start()) && t.isBefore(b.span().end()))
        .toList();
  }

  private static LocalDateTime later(LocalDateTime a, LocalDateTime b) {
    return a.isAfter(b) ? a : b;
  }
}
