package slabwright.work.days;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.work.step.StepMeans;
import slabwright.work.step.ToolKind;

/**
 * Which person and which tool is busy when; finds the first stretch with enough of both. One
 * planning run's own.
 */
final class CrewCalendar {
  /** A found place and, when people, tools or air were the reason for it, what it waited for. */
  record Slot(List<TimeSpan> spans, Assigned who, Optional<BindingConstraint> waitedFor) {}

  /** What stands against a place, and from when on it no longer does. */
  private record Block(LocalDateTime until, BindingConstraint why) {}

  /** Sums of shares within this count as the whole. */
  private static final double SLACK = 1e-9;

  private final WorkingWeek hours;
  private final JobMeans means;
  private final List<Reservation> busy = new ArrayList<>();

  CrewCalendar(WorkingWeek hours, JobMeans means) {
    this.hours = hours;
    this.means = means;
  }

  void reserve(WorkStep task, Slot slot) {
    busy.add(
        new Reservation(
            task, slot.spans(), slot.who(), SparkZone.of(task), hours.restAfter(slot.spans())));
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
    LocalDateTime at = hours.next(earliest);
    Optional<BindingConstraint> waitedFor = Optional.empty();
    while (true) {
      if (task.notOn().contains(at.toLocalDate())) {
        waitedFor = Optional.of(new BindingConstraint.Weather());
        at = hours.next(hours.end(at));
        continue;
      }
      List<TimeSpan> spans =
          task.mayPause()
              ? hours.spread(task.length(), at)
              : List.of(new TimeSpan(at, at.plus(task.length())));
      TimeSpan whole = Reservation.whole(spans);
      LocalDateTime rested = whole.end().plus(hours.restAfter(spans));
      if (!task.mayPause() && rested.isAfter(hours.end(at))) {
        at = hours.next(laterStart(at));
        continue;
      }
      List<Reservation> there = meeting(whole);
      List<Reservation> around = taking(new TimeSpan(whole.start(), rested));
      Optional<Block> block =
          noPeople(task, around)
              .or(() -> noTool(task, there, whole))
              .or(() -> spark(task, spans))
              .or(() -> breathed(task, spans.get(0).start()));
      if (block.isEmpty()) {
        return new Slot(spans, assign(task, spans, there, around), waitedFor);
      }
      waitedFor = Optional.of(block.get().why());
      at = hours.next(block.get().until());
    }
  }

  /** A loop, as all of these are asked for at every try of every order. */
  private List<Reservation> meeting(TimeSpan span) {
    List<Reservation> there = new ArrayList<>();
    for (Reservation b : busy) {
      if (b.meets(span)) {
        there.add(b);
      }
    }
    return there;
  }

  /** The same for people, who rest after what went on through the rest of the day. */
  private List<Reservation> taking(TimeSpan span) {
    List<Reservation> there = new ArrayList<>();
    for (Reservation b : busy) {
      if (b.takesPeople(span)) {
        there.add(b);
      }
    }
    return there;
  }

  /** What does not fit with the rest behind it may fit after the rest, else the next day. */
  private LocalDateTime laterStart(LocalDateTime at) {
    return hours
        .rest()
        .map(r -> at.toLocalDate().atTime(r.to()))
        .filter(at::isBefore)
        .orElse(hours.end(at));
  }

  private Optional<Block> noPeople(WorkStep task, List<Reservation> there) {
    if (free(task, there).size() >= task.people()) {
      return Optional.empty();
    }
    return there.stream()
        .filter(r -> r.who().persons().stream().anyMatch(i -> mayDo(task, i)))
        .min(Comparator.comparing(Reservation::rested))
        .map(r -> new Block(r.rested(), new BindingConstraint.Crew(r.task().id())));
  }

  private boolean mayDo(WorkStep task, int person) {
    return task.air().protection().isEmpty() || means.wears(person);
  }

  /** Loops here and below, as these are asked for at every try of every order. */
  private List<Integer> free(WorkStep task, List<Reservation> there) {
    List<Integer> free = new ArrayList<>();
    for (int i = 0; i < hours.people(); i++) {
      if (mayDo(task, i) && !isTaken(i, there)) {
        free.add(i);
      }
    }
    return free;
  }

  private static boolean isTaken(int person, List<Reservation> there) {
    for (Reservation r : there) {
      if (r.who().persons().contains(person)) {
        return true;
      }
    }
    return false;
  }

  private Optional<Block> noTool(WorkStep task, List<Reservation> there, TimeSpan span) {
    if (means.tools().isEmpty()) {
      return Optional.empty();
    }
    for (ToolKind kind : task.type().tools()) {
      List<JobTool> suitable = means.suitable(task, kind);
      List<Reservation> held = kind == ToolKind.FAN ? blowing(task, span) : there;
      if (idle(suitable, held).size() < task.each(kind)) {
        return held.stream()
            .filter(r -> r.who().tools().stream().anyMatch(suitable::contains))
            .min(Comparator.comparing(r -> until(r, kind)))
            .map(r -> new Block(until(r, kind), new BindingConstraint.Tool(r.task().id())));
      }
    }
    return Optional.empty();
  }

  private static LocalDateTime until(Reservation r, ToolKind kind) {
    return kind == ToolKind.FAN ? r.clear() : r.end();
  }

  /** Whose fans run somewhere else, or here for another step, until the air is clear. */
  private List<Reservation> blowing(WorkStep task, TimeSpan span) {
    TimeSpan own = new TimeSpan(span.start(), span.end().plus(task.air().fan()));
    List<Reservation> blowing = new ArrayList<>();
    for (Reservation r : busy) {
      boolean here = r.task().type().isOn(task.type().areaId());
      if (here ? r.meets(span) : new TimeSpan(r.spans().get(0).start(), r.clear()).meets(own)) {
        blowing.add(r);
      }
    }
    return blowing;
  }

  private static List<JobTool> idle(List<JobTool> tools, List<Reservation> there) {
    List<JobTool> idle = new ArrayList<>();
    for (JobTool t : tools) {
      if (!isTaken(t, there)) {
        idle.add(t);
      }
    }
    return idle;
  }

  private static boolean isTaken(JobTool tool, List<Reservation> there) {
    for (Reservation r : there) {
      if (r.who().tools().contains(tool)) {
        return true;
      }
    }
    return false;
  }

  /** Of the steps whose vapour, sparks, dust or wet coat forbid the place, the first out. */
  private Optional<Block> spark(WorkStep task, List<TimeSpan> spans) {
    SparkZone zone = SparkZone.of(task);
    Optional<Block> first = Optional.empty();
    for (Reservation r : busy) {
      if (zone.keepsApart(r.zone())) {
        for (TimeSpan s : spans) {
          Optional<LocalDateTime> t = r.notBefore(s, zone);
          if (t.isPresent() && first.filter(b -> !b.until().isAfter(t.get())).isEmpty()) {
            first = Optional.of(new Block(t.get(), apart(zone, r)));
          }
        }
      }
    }
    return first;
  }

  private static BindingConstraint apart(SparkZone zone, Reservation r) {
    return zone.isByVapour(r.zone())
        ? new BindingConstraint.Spark(r.task().id())
        : new BindingConstraint.Dust(r.task().id());
  }

  /**
   * The last step of a day with vapour when a shift can't hold one more; as if one person did them
   * all, so that nobody has to be kept from swapping.
   */
  private Optional<Block> breathed(WorkStep task, LocalDateTime start) {
    double more = task.air().shift();
    if (more <= 0) {
      return Optional.empty();
    }
    List<Reservation> that =
        busy.stream()
            .filter(b -> b.task().air().shift() > 0 && b.day().equals(start.toLocalDate()))
            .toList();
    double all = that.stream().mapToDouble(b -> b.task().air().shift()).sum() + more;
    return all > 1 + SLACK
        ? that.stream()
            .max(Comparator.comparing(Reservation::end))
            .map(b -> new Block(hours.end(start), new BindingConstraint.Air(b.task().id())))
        : Optional.empty();
  }

  private Assigned assign(
      WorkStep task, List<TimeSpan> spans, List<Reservation> there, List<Reservation> around) {
    List<LocalDate> days = spans.stream().map(s -> s.start().toLocalDate()).distinct().toList();
    List<Integer> free = free(task, around);
    List<Integer> persons =
        free.size() <= task.people()
            ? free
            : free.stream().sorted(preference(task, days)).limit(task.people()).sorted().toList();
    List<JobTool> tools = new ArrayList<>();
    if (means.tools().isPresent()) {
      task.type().tools().stream()
          .sorted()
          .forEach(
              k ->
                  idle(
                          means.suitable(task, k),
                          k == ToolKind.FAN ? blowing(task, Reservation.whole(spans)) : there)
                      .stream()
                      .limit(task.each(k))
                      .forEach(tools::add));
    }
    return new Assigned(persons, tools);
  }

  /**
   * Who has no mask does what needs none. Who walks behind the grinder goes on with it; others
   * grind by hand, those with the least grinding that day first, so that few grind over four hours
   * a shift.
   */
  private Comparator<Integer> preference(WorkStep task, List<LocalDate> days) {
    boolean masked = !task.air().protection().isEmpty();
    Comparator<Integer> who = Comparator.comparing(i -> !masked && means.wears(i));
    if (!task.type().kind().grindsConcrete()) {
      return who;
    }
    Comparator<Integer> least =
        Comparator.comparing(i -> sum(busy.stream().map(r -> r.grinding(i, days)).toList()));
    Comparator<Integer> behind =
        Comparator.comparing(i -> sum(busy.stream().map(r -> r.behindMachine(i)).toList()));
    return task.type().means() == StepMeans.MACHINE
        ? who.thenComparing(behind.reversed()).thenComparing(least)
        : who.thenComparing(least).thenComparing(behind);
  }

  private static Duration sum(List<Duration> all) {
    return all.stream().reduce(Duration.ZERO, Duration::plus);
  }
}
