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

  private final WorkingWeek hours;
  private final JobMeans means;
  private final LocalDate firstDay;
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
   * @param asked steps that somebody wants not before a time
   * @param held steps held back so that the next one meets its window
   */
  PartialSchedule(
      WorkingWeek hours,
      JobMeans means,
      LocalDate firstDay,
      Map<String, LocalDateTime> asked,
      Map<String, LocalDateTime> held) {
    this.hours = hours;
    this.means = means;
    this.firstDay = firstDay;
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
   * which the step itself is still to place. Or says why it can't be.
   */
  Optional<Message> place(WorkStep task) {
    Optional<ScheduledStep> before = Optional.ofNullable(abraded.get(task.id()));
    List<Ready> reasons = reasons(task);
    before.ifPresent(
        a -> reasons.add(new Ready(a.end(), new BindingConstraint.Step(a.task().id()))));
    Ready ready = latest(reasons);
    CrewCalendar.Slot slot = crew.find(task, ready.at());
    Optional<StepWait> missed =
        before.isPresent() ? Optional.empty() : missed(task, slot.spans().get(0).start());
    if (missed.isEmpty()) {
      put(task, slot, ready.why(), "");
      return Optional.empty();
    }
    misses.add(new Miss(task, missed.get(), QuarterHour.up(slot.spans().get(0).start())));
    return abrade(task, missed.get());
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
