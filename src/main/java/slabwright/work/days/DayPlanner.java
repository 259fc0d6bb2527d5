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

/**
 * Places steps one after the other in the order given, each as early as its waits, the crew and the
 * working day allow. A coat whose longest recoat time has passed gets an abrading step first. The
 * order decides who gets the crew; the result is the earliest for that order, not the shortest of
 * all orders.
 */
public final class DayPlanner {
  private final Hours hours;
  private final LocalDate firstDay;
  private final Map<String, LocalDateTime> notBefore;
  private final CrewBook crew;
  private final Map<String, Placed> placed = new HashMap<>();
  private final List<Placed> order = new ArrayList<>();

  private DayPlanner(Hours hours, LocalDate firstDay, Map<String, LocalDateTime> notBefore) {
    this.hours = hours;
    this.firstDay = firstDay;
    this.notBefore = notBefore;
    this.crew = new CrewBook(hours);
  }

  public static Planned plan(List<Task> tasks, Hours hours, LocalDate firstDay) {
    return plan(tasks, hours, firstDay, Map.of());
  }

  /** With some steps, by id, not starting before a stated time. */
  public static Planned plan(
      List<Task> tasks, Hours hours, LocalDate firstDay, Map<String, LocalDateTime> notBefore) {
    Optional<String> fault = TaskCheck.fault(tasks, hours);
    return fault.isPresent()
        ? new Planned.Refused(fault.get())
        : new DayPlanner(hours, firstDay, Map.copyOf(notBefore)).run(tasks);
  }

  private Planned run(List<Task> tasks) {
    for (Task task : tasks) {
      Optional<String> fault = place(task);
      if (fault.isPresent()) {
        return new Planned.Refused(fault.get());
      }
    }
    return new Planned.Days(new DayPlan(hours, firstDay, order));
  }

  private Optional<String> place(Task task) {
    Ready ready = ready(task);
    CrewBook.Slot slot = crew.find(task, ready.at());
    Optional<Wait> missed = missed(task, slot.spans().get(0).start());
    if (missed.isEmpty()) {
      put(task, slot, ready.why(), "");
      return Optional.empty();
    }
    return abradeFirst(task, missed.get(), ready);
  }

  private Optional<String> abradeFirst(Task task, Wait missed, Ready ready) {
    if (task.abrading().isEmpty()) {
      return Optional.of(
          "\"%s\" can't start within the longest recoat time after \"%s\" and there is no abrading rate; put one in the shop book or move the coats closer"
              .formatted(task.name(), placed.get(missed.after()).task().name()));
    }
    Task abrade = abrading(task, task.abrading().get());
    put(abrade, crew.find(abrade, ready.at()), ready.why(), task.id());
    LocalDateTime after = placed.get(abrade.id()).end();
    put(task, crew.find(task, after), new HeldBy.Step(abrade.id()), "");
    return Optional.empty();
  }

  private static Task abrading(Task coat, Duration length) {
    return new Task(
        coat.id() + ".abrade",
        "Abrade before: " + coat.name(),
        coat.area(),
        length,
        coat.people(),
        true,
        List.of(),
        Optional.empty(),
        Optional.empty());
  }

  private void put(Task task, CrewBook.Slot slot, HeldBy ready, String abradesFor) {
    HeldBy why = slot.waitedFor().<HeldBy>map(HeldBy.Crew::new).orElse(ready);
    Placed p = new Placed(task, slot.spans(), why, abradesFor);
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

  private Ready ready(Task task) {
    Ready first = new Ready(firstDay.atTime(hours.from()), new HeldBy.FirstDay());
    List<Ready> all = new ArrayList<>(List.of(first));
    for (Wait w : task.waits()) {
      all.add(new Ready(placed.get(w.after()).end().plus(w.atLeast()), new HeldBy.Step(w.after())));
    }
    LocalDateTime asked = notBefore.get(task.id());
    if (asked != null) {
      all.add(new Ready(asked, new HeldBy.Asked()));
    }
    return all.stream().max(Comparator.comparing(Ready::at)).orElse(first);
  }
}
