package slabwright.work.days;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import slabwright.units.Message;
import slabwright.units.SortedCopy;

/**
 * Branch and bound over the orders in which steps are placed, and over steps held back for the
 * window of the next; one use. See {@link DayPlanner}.
 */
final class ScheduleSearch {
  /** Placings tried before the best so far is taken; a fixed number keeps results the same. */
  private static final int MOST_PLACED = 3000;

  /** Ways of holding steps back that are looked into. */
  private static final int MOST_HOLDS = 60;

  private final List<WorkStep> tasks;
  private final WorkingWeek hours;
  private final JobMeans means;
  private final LocalDate firstDay;
  private final Map<String, LocalDateTime> asked;
  private final JoinedSteps joined;
  private final LocalDateTime earliest;
  private final Deque<Map<String, LocalDateTime>> holds = new ArrayDeque<>();
  private final Set<Map<String, LocalDateTime>> known = new HashSet<>();
  private Optional<DayPlan> best = Optional.empty();

  /** Of the best: asked for at every placing, so counted once. */
  private LocalDateTime bestEnd = LocalDateTime.MAX;

  private int bestAbrading = Integer.MAX_VALUE;
  private Optional<Message> fault = Optional.empty();
  private int placed;

  ScheduleSearch(
      List<WorkStep> tasks,
      WorkingWeek hours,
      JobMeans means,
      LocalDate firstDay,
      Map<String, LocalDateTime> asked) {
    this.tasks = tasks;
    this.hours = hours;
    this.means = means;
    this.firstDay = firstDay;
    this.asked = SortedCopy.of(asked);
    this.joined = JoinedSteps.of(tasks);
    this.earliest = new ScheduleLowerBound(tasks, hours, means, firstDay, asked).end();
  }

  Planned best() {
    hold(Map.of());
    while (!holds.isEmpty() && placed < MOST_PLACED && !isPerfect()) {
      new OrderSearch(holds.remove()).search();
    }
    return best.<Planned>map(Planned.Days::new)
        .orElseGet(() -> new Planned.Refused(fault.orElseThrow()));
  }

  private void hold(Map<String, LocalDateTime> held) {
    if (known.size() < MOST_HOLDS && known.add(held)) {
      holds.add(held);
    }
  }

  private boolean isPerfect() {
    return bestAbrading == 0 && !bestEnd.isAfter(earliest);
  }

  static final Comparator<DayPlan> BETTER =
      Comparator.comparing(DayPlan::end).thenComparing(DayPlan::abrading);

  private void offer(DayPlan plan) {
    if (best.isEmpty() || BETTER.compare(plan, best.get()) < 0) {
      best = Optional.of(plan);
      bestEnd = plan.end();
      bestAbrading = plan.abrading();
    }
  }

  /** All orders with certain steps held back. */
  private final class OrderSearch {
    private final Map<String, LocalDateTime> held;
    private final ScheduleLowerBound bound;
    private final PartialSchedule pass;
    private final Set<Map<String, LocalDateTime>> seen = new HashSet<>();
    private final List<WorkStep> urgentFirst;

    OrderSearch(Map<String, LocalDateTime> held) {
      this.held = held;
      Map<String, LocalDateTime> all = new HashMap<>(asked);
      held.forEach((id, t) -> all.merge(id, t, (a, b) -> a.isAfter(b) ? a : b));
      this.bound = new ScheduleLowerBound(tasks, hours, means, firstDay, all);
      this.pass = new PartialSchedule(hours, means, firstDay, joined, asked, held);
      this.urgentFirst =
          tasks.stream().sorted(Comparator.comparing(bound::tail).reversed()).toList();
    }

    void search() {
      if (best.isPresent() && bound.end().isAfter(bestEnd)) {
        return;
      }
      inOrder(tasks);
      deeper();
      pass.misses().forEach(this::holdBack);
    }

    private void inOrder(List<WorkStep> order) {
      for (WorkStep t : order) {
        placed++;
        if (noted(pass.placeWhole(t))) {
          break;
        }
      }
      if (isComplete()) {
        offer(pass.plan());
      }
      pass.rollBack(0);
    }

    private boolean noted(Optional<Message> why) {
      if (fault.isEmpty()) {
        fault = why;
      }
      return why.isPresent();
    }

    private boolean isComplete() {
      return tasks.stream().allMatch(t -> pass.step(t.id()).isPresent());
    }

    private void deeper() {
      if (isComplete()) {
        offer(pass.plan());
        return;
      }
      for (WorkStep t : urgentFirst) {
        if (placed >= MOST_PLACED || isPerfect()) {
          return;
        }
        if (pass.step(t.id()).isEmpty() && isReady(t)) {
          follow(() -> !noted(pass.place(t)));
          follow(() -> pass.abradeAnyway(t));
        }
      }
    }

    private void follow(BooleanSupplier way) {
      int before = pass.count();
      placed++;
      if (way.getAsBoolean() && promises() && isNew()) {
        deeper();
      }
      pass.rollBack(before);
    }

    private boolean isReady(WorkStep t) {
      return t.waits().stream().allMatch(w -> pass.step(w.after()).isPresent());
    }

    /** Whether the steps placed so far may still lead to a better plan than the best. */
    private boolean promises() {
      if (best.isEmpty()) {
        return true;
      }
      int compared = least().compareTo(bestEnd);
      return compared < 0 || (compared == 0 && pass.abrading() < bestAbrading);
    }

    private LocalDateTime least() {
      LocalDateTime least = bound.end();
      for (WorkStep t : tasks) {
        Optional<ScheduledStep> p = pass.step(t.id());
        for (StepWait w : t.waits()) {
          Optional<ScheduledStep> after = pass.step(w.after());
          if (p.isEmpty() && after.isPresent()) {
            LocalDateTime end = after.get().end().plus(w.atLeast()).plus(bound.tail(t));
            least = end.isAfter(least) ? end : least;
          }
        }
        least = p.isPresent() && p.get().end().isAfter(least) ? p.get().end() : least;
      }
      return least;
    }

    /** Other orders often lead to the same places; what follows from them is then the same too. */
    private boolean isNew() {
      Map<String, LocalDateTime> starts = new HashMap<>();
      pass.order().forEach(p -> starts.put(p.task().id(), p.start()));
      return seen.add(starts);
    }

    /** Starts the step before so late that the next one meets its window. */
    private void holdBack(PartialSchedule.Miss miss) {
      WorkStep before =
          tasks.stream()
              .filter(t -> t.id().equals(miss.window().after()))
              .findFirst()
              .orElseThrow();
      LocalDateTime end = miss.start().minus(miss.window().atMost().orElseThrow());
      Map<String, LocalDateTime> more = new HashMap<>(held);
      more.put(before.id(), hours.next(end.minus(before.length())));
      hold(SortedCopy.of(more));
    }
  }
}
