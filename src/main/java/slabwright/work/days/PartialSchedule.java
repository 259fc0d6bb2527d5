package slabwright.work.days;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slabwright.units.Message;
import slabwright.units.QuarterHour;

/** Steps placed one after the other, each as early as can be; the last ones can be taken back. */
final class PartialSchedule {
  /** A window that was missed: the step that came too late, the one before it, and when it came. */
  record Miss(WorkStep late, StepWait window, LocalDateTime start) {}

  /** Steps that may not be done on one day, as where the air of a shift forbids it, end this. */
  private static final Duration LONGEST_PUT_OFF = Duration.ofDays(8);

  private final WorkingWeek hours;
  private final JobMeans means;
  private final LocalDate firstDay;
  private final JoinedSteps joined;
  private final Map<String, LocalDateTime> asked;
  private final Map<String, LocalDateTime> held;
  private final CrewCalendar crew;
  private final Map<String, ScheduledStep> placed = new HashMap<>();

  /** The abrading that is placed before a step, by that step's id. */
  private final Map<String, ScheduledStep> abraded = new HashMap<>();

  private final List<ScheduledStep> order = new ArrayList<>();
  private final List<Integer> taken = new ArrayList<>();
  private final List<Miss> misses = new ArrayList<>();

  /**
   * An empty plan.
   *
   * @param joined which steps are placed together with the one before
   * @param asked steps that somebody wants not before a time
   * @param held steps held back so that the next one meets its window
   */
  PartialSchedule(
      WorkingWeek hours,
      JobMeans means,
      LocalDate firstDay,
      JoinedSteps joined,
      Map<String, LocalDateTime> asked,
      Map<String, LocalDateTime> held) {
    this.hours = hours;
    this.means = means;
    this.firstDay = firstDay;
    this.joined = joined;
    this.asked = asked;
    this.held = held;
    this.crew = new CrewCalendar(hours, means);
  }

  DayPlan plan() {
    return new DayPlan(hours, means, firstDay, order);
  }

  /** Every window missed so far, taken back or not. */
  List<Miss> misses() {
    return misses;
  }

  Optional<ScheduledStep> step(String id) {
    return Optional.ofNullable(placed.get(id));
  }

  int abrading() {
    return (int) order.stream().filter(ScheduledStep::isAbrading).count();
  }

  int count() {
    return order.size();
  }

  List<ScheduledStep> order() {
    return order;
  }

  /** Takes back all but the first {@code count} placed. */
  void rollBack(int count) {
    while (order.size() > count) {
      ScheduledStep last = order.remove(order.size() - 1);
      placed.remove(last.task().id());
      abraded.remove(last.abradesFor());
      crew.rollBack(taken.remove(taken.size() - 1));
    }
  }

  /** Places a step with the abrading it may need; or says why it can't be. */
  Optional<Message> placeWhole(WorkStep task) {
    Optional<Message> fault = place(task);
    return fault.isEmpty() && step(task.id()).isEmpty() ? place(task) : fault;
  }

  /**
   * Places a step whose waits are placed; where its window would be missed only the abrading, after
   * which the step itself is still to place. Or says why it can't be. A step that came with the one
   * before is placed already.
   */
  Optional<Message> place(WorkStep task) {
    if (step(task.id()).isPresent()) {
      return Optional.empty();
    }
    Optional<ScheduledStep> before = Optional.ofNullable(abraded.get(task.id()));
    List<Ready> reasons = reasons(task);
    before.ifPresent(
        a -> reasons.add(new Ready(a.end(), new BindingConstraint.Step(a.task().id()))));
    Ready ready = latest(reasons);
    CrewCalendar.Slot slot = find(task, ready.at());
    Optional<StepWait> missed =
        before.isPresent() ? Optional.empty() : missed(task, slot.spans().get(0).start());
    if (missed.isEmpty()) {
      put(task, slot, ready.why(), "");
      joined
          .after(task.id())
          .ifPresent(
              next -> {
                LocalDateTime end = placed.get(task.id()).end();
                put(next, crew.find(next, end), new BindingConstraint.Step(task.id()), "");
              });
      return Optional.empty();
    }
    misses.add(new Miss(task, missed.get(), QuarterHour.up(slot.spans().get(0).start())));
    return abrade(task, missed.get());
  }

  /** The first place after which the next step can go on at once; if there is none soon, any. */
  private CrewCalendar.Slot find(WorkStep task, LocalDateTime earliest) {
    CrewCalendar.Slot slot = crew.find(task, earliest);
    CrewCalendar.Slot alone = slot;
    Optional<WorkStep> next = joined.after(task.id());
    if (next.isEmpty()) {
      return slot;
    }
    Optional<LocalDateTime> again = tooEarly(task, slot, next.get());
    Optional<BindingConstraint> why = slot.waitedFor();
    while (again.isPresent()) {
      if (again.get().isAfter(alone.spans().get(0).start().plus(LONGEST_PUT_OFF))) {
        return alone;
      }
      why = Optional.of(new BindingConstraint.Together(next.get().id()));
      slot = crew.find(task, again.get());
      again = tooEarly(task, slot, next.get());
    }
    return new CrewCalendar.Slot(slot.spans(), slot.who(), why);
  }

  private Optional<LocalDateTime> tooEarly(WorkStep task, CrewCalendar.Slot slot, WorkStep next) {
    int mark = crew.reservations();
    crew.reserve(task, slot);
    List<TimeSpan> spans = slot.spans();
    List<TimeSpan> after = crew.find(next, spans.get(spans.size() - 1).end()).spans();
    crew.rollBack(mark);
    return JoinedSteps.notBefore(task, spans, after, next, hours);
  }

  /** Abrades before a coat that could still meet its window, so that it may come later. */
  boolean abradeAnyway(WorkStep task) {
    boolean wanted =
        task.abrading().isPresent()
            && !abraded.containsKey(task.id())
            && task.waits().stream().anyMatch(w -> w.atMost().isPresent());
    return wanted && abrade(task, task.waits().get(0)).isEmpty();
  }

  /** As soon as the floor is dry, also where the coat itself is held back. */
  private Optional<Message> abrade(WorkStep task, StepWait missed) {
    if (task.abrading().isEmpty()) {
      return Optional.of(
          Message.of(
              "work.partial-schedule.cant-start-within-the-longest",
              task.name(),
              placed.get(missed.after()).task().name()));
    }
    WorkStep abrade = abrading(task, task.abrading().get());
    Ready dry = latest(waits(task));
    put(abrade, crew.find(abrade, dry.at()), dry.why(), task.id());
    return Optional.empty();
  }

  private static WorkStep abrading(WorkStep coat, Duration length) {
    return new WorkStep(
        coat.id() + ".abrade",
        Message.of("work.partial-schedule.abrade-before", coat.name()),
        coat.area(),
        coat.type().abrading(),
        length,
        coat.people(),
        true,
        List.of(),
        Optional.empty(),
        Optional.empty());
  }

  private void put(
      WorkStep task, CrewCalendar.Slot slot, BindingConstraint ready, String abradesFor) {
    BindingConstraint why = slot.waitedFor().orElse(ready);
    ScheduledStep p = new ScheduledStep(task, slot.spans(), why, abradesFor, slot.who());
    taken.add(crew.reservations());
    crew.reserve(task, slot);
    placed.put(task.id(), p);
    order.add(p);
    if (p.isAbrading()) {
      abraded.put(abradesFor, p);
    }
  }

  /** A window counts as the crew is told it: a start by the next quarter, its end by the last. */
  private Optional<StepWait> missed(WorkStep task, LocalDateTime start) {
    return task.waits().stream()
        .filter(w -> w.atMost().isPresent())
        .filter(
            w ->
                QuarterHour.up(start)
                    .isAfter(QuarterHour.down(placed.get(w.after()).end().plus(w.atMost().get()))))
        .findFirst();
  }

  private record Ready(LocalDateTime at, BindingConstraint why) {}

  private static Ready latest(List<Ready> all) {
    return all.stream().max(Comparator.comparing(Ready::at)).orElseThrow();
  }

  private List<Ready> waits(WorkStep task) {
    List<Ready> all = new ArrayList<>();
    all.add(new Ready(firstDay.atTime(hours.from()), new BindingConstraint.FirstDay()));
    for (StepWait w : task.waits()) {
      all.add(
          new Ready(
              placed.get(w.after()).end().plus(w.atLeast()),
              new BindingConstraint.Step(w.after())));
    }
    return all;
  }

  private List<Ready> reasons(WorkStep task) {
    List<Ready> all = waits(task);
    Optional.ofNullable(asked.get(task.id()))
        .ifPresent(t -> all.add(new Ready(t, new BindingConstraint.NotBefore())));
    Optional.ofNullable(held.get(task.id()))
        .ifPresent(t -> all.add(new Ready(t, new BindingConstraint.Window(task.id()))));
    return all;
  }
}
