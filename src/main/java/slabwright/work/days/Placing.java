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

/** Steps placed one after the other, each as early as can be; the last ones can be taken back. */
final class Placing {
  /** A window that was missed: the step that came too late, the one before it, and when it came. */
  record Miss(Task late, Wait window, LocalDateTime start) {}

  private static final String ABRADE = ".abrade";

  private final Hours hours;
  private final LocalDate firstDay;
  private final Map<String, LocalDateTime> asked;
  private final Map<String, LocalDateTime> held;
  private final CrewBook crew;
  private final Map<String, Placed> placed = new HashMap<>();
  private final List<Placed> order = new ArrayList<>();
  private final List<Integer> taken = new ArrayList<>();
  private final List<Miss> misses = new ArrayList<>();

  /**
   * An empty plan.
   *
   * @param asked steps that somebody wants not before a time
   * @param held steps held back so that the next one meets its window
   */
  Placing(
      Hours hours,
      LocalDate firstDay,
      Map<String, LocalDateTime> asked,
      Map<String, LocalDateTime> held) {
    this.hours = hours;
    this.firstDay = firstDay;
    this.asked = asked;
    this.held = held;
    this.crew = new CrewBook(hours);
  }

  DayPlan plan() {
    return new DayPlan(hours, firstDay, order);
  }

  /** Every window missed so far, taken back or not. */
  List<Miss> misses() {
    return misses;
  }

  Optional<Placed> step(String id) {
    return Optional.ofNullable(placed.get(id));
  }

  int abrading() {
    return (int) order.stream().filter(Placed::isAbrading).count();
  }

  int count() {
    return order.size();
  }

  List<Placed> order() {
    return order;
  }

  /** Takes back all but the first {@code count} placed. */
  void back(int count) {
    while (order.size() > count) {
      placed.remove(order.remove(order.size() - 1).task().id());
      crew.back(taken.remove(taken.size() - 1));
    }
  }

  /** Places a step with the abrading it may need; or says why it can't be. */
  Optional<String> placeWhole(Task task) {
    Optional<String> fault = place(task);
    return fault.isEmpty() && step(task.id()).isEmpty() ? place(task) : fault;
  }

  /**
   * Places a step whose waits are placed; where its window would be missed only the abrading, after
   * which the step itself is still to place. Or says why it can't be.
   */
  Optional<String> place(Task task) {
    Optional<Placed> abraded = step(task.id() + ABRADE);
    List<Ready> reasons = reasons(task);
    abraded.ifPresent(a -> reasons.add(new Ready(a.end(), new HeldBy.Step(a.task().id()))));
    Ready ready = latest(reasons);
    CrewBook.Slot slot = crew.find(task, ready.at());
    Optional<Wait> missed =
        abraded.isPresent() ? Optional.empty() : missed(task, slot.spans().get(0).start());
    if (missed.isEmpty()) {
      put(task, slot, ready.why(), "");
      return Optional.empty();
    }
    misses.add(new Miss(task, missed.get(), slot.spans().get(0).start()));
    return abrade(task, missed.get());
  }

  /** Abrades before a coat that could still meet its window, so that it may come later. */
  boolean abradeAnyway(Task task) {
    boolean wanted =
        task.abrading().isPresent()
            && step(task.id() + ABRADE).isEmpty()
            && task.waits().stream().anyMatch(w -> w.atMost().isPresent());
    return wanted && abrade(task, task.waits().get(0)).isEmpty();
  }

  /** As soon as the floor is dry, also where the coat itself is held back. */
  private Optional<String> abrade(Task task, Wait missed) {
    if (task.abrading().isEmpty()) {
      return Optional.of(
          "\"%s\" can't start within the longest recoat time after \"%s\" and there is no abrading rate; put one in the shop book or move the coats closer"
              .formatted(task.name(), placed.get(missed.after()).task().name()));
    }
    Task abrade = abrading(task, task.abrading().get());
    Ready dry = latest(waits(task));
    put(abrade, crew.find(abrade, dry.at()), dry.why(), task.id());
    return Optional.empty();
  }

  private static Task abrading(Task coat, Duration length) {
    return Task.pausing(
        coat.id() + ABRADE, "Abrade before: " + coat.name(), coat.area(), length, coat.people());
  }

  private void put(Task task, CrewBook.Slot slot, HeldBy ready, String abradesFor) {
    HeldBy why = slot.waitedFor().<HeldBy>map(HeldBy.Crew::new).orElse(ready);
    Placed p = new Placed(task, slot.spans(), why, abradesFor);
    taken.add(crew.mark());
    crew.take(task, slot.spans());
    placed.put(task.id(), p);
    order.add(p);
  }

  private Optional<Wait> missed(Task task, LocalDateTime start) {
    return task.waits().stream()
        .filter(w -> w.atMost().isPresent())
        .filter(w -> start.isAfter(placed.get(w.after()).end().plus(w.atMost().get())))
        .findFirst();
  }

  private record Ready(LocalDateTime at, HeldBy why) {}

  private static Ready latest(List<Ready> all) {
    return all.stream().max(Comparator.comparing(Ready::at)).orElseThrow();
  }

  private List<Ready> waits(Task task) {
    List<Ready> all = new ArrayList<>();
    all.add(new Ready(firstDay.atTime(hours.from()), new HeldBy.FirstDay()));
    for (Wait w : task.waits()) {
      all.add(new Ready(placed.get(w.after()).end().plus(w.atLeast()), new HeldBy.Step(w.after())));
    }
    return all;
  }

  private List<Ready> reasons(Task task) {
    List<Ready> all = waits(task);
    Optional.ofNullable(asked.get(task.id()))
        .ifPresent(t -> all.add(new Ready(t, new HeldBy.Asked())));
    Optional.ofNullable(held.get(task.id()))
        .ifPresent(t -> all.add(new Ready(t, new HeldBy.Window(task.id()))));
    return all;
  }
}
