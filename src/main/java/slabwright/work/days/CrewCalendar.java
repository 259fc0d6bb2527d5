package slabwright.work.days;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Who is busy when; finds the first stretch with enough free people. One planning run's own. */
final class CrewCalendar {
  /**
   * How long how many people are wanted, and whether they may go on the next morning.
   *
   * @param shift what they breathe of a shift's average
   * @param zone its sparks, and where its vapour gets to
   */
  record Demand(Duration length, int people, boolean mayPause, double shift, SparkZone zone) {}

  /** A stretch of a step; what is breathed on it counts on the day it starts. */
  private record Busy(String id, TimeSpan span, int people, double shift, SparkZone zone) {}

  /** A found place and, when the crew was the reason for it, what kept them. */
  record Slot(List<TimeSpan> spans, Optional<BindingConstraint> waitedFor) {}

  /** Sums of shares within this count as the whole. */
  private static final double SLACK = 1e-9;

  private final WorkingWeek hours;
  private final List<Busy> busy = new ArrayList<>();

  CrewCalendar(WorkingWeek hours) {
    this.hours = hours;
  }

  void reserve(WorkStep task, List<TimeSpan> spans) {
    double shift = task.air().shift();
    SparkZone zone = SparkZone.of(task);
    for (TimeSpan s : spans) {
      busy.add(new Busy(task.id(), s, task.people(), shift, zone));
      shift = 0;
    }
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
    Demand demand =
        new Demand(
            task.length(), task.people(), task.mayPause(), task.air().shift(), SparkZone.of(task));
    return find(demand, earliest);
  }

  /** The first place of work that is no step of the plan. */
  Slot find(Demand task, LocalDateTime earliest) {
    LocalDateTime at = hours.next(earliest);
    Optional<BindingConstraint> waitedFor = Optional.empty();
    while (true) {
      List<TimeSpan> spans = hours.spread(task.length(), at);
      if (spans.size() > 1 && !task.mayPause()) {
        at = hours.next(hours.end(at));
        continue;
      }
      Optional<Busy> block = firstBlock(spans, task.people());
      if (block.isPresent()) {
        waitedFor = Optional.of(new BindingConstraint.Crew(block.get().id()));
        at = hours.next(block.get().span().end());
        continue;
      }
      Optional<Apart> apart = apart(spans, task.zone());
      if (apart.isPresent()) {
        waitedFor = Optional.of(new BindingConstraint.Spark(apart.get().id()));
        at = hours.next(apart.get().until());
        continue;
      }
      Optional<Busy> breathed = breathed(spans.get(0).start().toLocalDate(), task.shift());
      if (breathed.isEmpty()) {
        return new Slot(spans, waitedFor);
      }
      waitedFor = Optional.of(new BindingConstraint.Air(breathed.get().id()));
      at = hours.next(hours.end(at));
    }
  }

  /** The step to be kept apart from, and until when. */
  private record Apart(String id, LocalDateTime until) {}

  /** Of the steps beside shared doorways whose vapour or sparks forbid the place, the first out. */
  private Optional<Apart> apart(List<TimeSpan> spans, SparkZone zone) {
    return busy.stream()
        .flatMap(
            b ->
                spans.stream()
                    .flatMap(s -> zone.notBefore(s, b.zone(), b.span()).stream())
                    .map(t -> new Apart(b.id(), t)))
        .min(Comparator.comparing(Apart::until));
  }

  /**
   * The last step of a day with vapour when a shift can't hold one more; as if one person did them
   * all, so that nobody has to be kept from swapping.
   */
  private Optional<Busy> breathed(LocalDate day, double more) {
    List<Busy> that =
        busy.stream()
            .filter(b -> b.shift() > 0 && b.span().start().toLocalDate().equals(day))
            .toList();
    double all = that.stream().mapToDouble(Busy::shift).sum() + more;
    return more > 0 && all > 1 + SLACK
        ? that.stream().max(Comparator.comparing((Busy b) -> b.span().end()))
        : Optional.empty();
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
