package slabwright.work.days;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import slabwright.units.Message;

/**
 * The day plan as bars to draw: one row a step, each with what happens when.
 *
 * @param hours when the crew works
 * @param from the first moment drawn
 * @param to the last moment drawn
 */
public record DayBars(WorkingWeek hours, LocalDateTime from, LocalDateTime to, List<Row> rows) {
  public DayBars {
    rows = List.copyOf(rows);
  }

  /** What a bar stands for. */
  public enum Kind {
    WORK,
    DRYING,
    /** The recoat window is open. */
    WINDOW,
    KEEP_OUT
  }

  /** One stretch of a row. */
  public record Bar(Kind kind, TimeSpan span) {}

  /**
   * One step's row.
   *
   * @param areaId of its floor area; two may have one name
   * @param critical whether it has no slack: a later start ends the job later
   */
  public record Row(Message name, String areaId, String area, boolean critical, List<Bar> bars) {
    public Row {
      bars = List.copyOf(bars);
    }
  }

  /** The rows of one floor area. */
  public record Group(String area, List<Row> rows) {
    public Group {
      rows = List.copyOf(rows);
    }
  }

  /** The rows floor area by floor area, so that what runs side by side is seen as such. */
  public List<Group> groups() {
    Map<String, List<Row>> byArea = new LinkedHashMap<>();
    rows.forEach(r -> byArea.computeIfAbsent(r.areaId(), a -> new ArrayList<>()).add(r));
    return byArea.values().stream().map(l -> new Group(l.get(0).area(), l)).toList();
  }

  /** When the crew is off between the first midnight and the last. */
  public List<TimeSpan> nights() {
    List<TimeSpan> nights = new ArrayList<>();
    LocalDateTime at = from.toLocalDate().atStartOfDay();
    LocalDateTime last = to.toLocalDate().plusDays(1).atStartOfDay();
    while (at.isBefore(last)) {
      LocalDateTime work = hours.next(at);
      LocalDateTime end = work.isBefore(last) ? work : last;
      if (at.isBefore(end)) {
        nights.add(new TimeSpan(at, end));
      }
      at = work.isBefore(last) ? hours.end(work) : last;
    }
    return nights;
  }

  public static DayBars of(DayPlan plan) {
    return of(plan, CriticalSteps.of(plan));
  }

  /** As above, where the table of the same plan is at hand: it says which steps have no slack. */
  public static DayBars of(DayPlan plan, DayTable table) {
    return of(
        plan,
        table.lines().stream()
            .filter(DayTable.Line::critical)
            .map(DayTable.Line::id)
            .collect(Collectors.toSet()));
  }

  private static DayBars of(DayPlan plan, Set<String> critical) {
    List<Row> rows =
        plan.steps().stream().map(s -> row(s, critical.contains(s.task().id()), plan)).toList();
    LocalDateTime start = plan.firstDay().atTime(plan.hours().from());
    LocalDateTime last =
        rows.stream()
            .flatMap(r -> r.bars().stream())
            .map(b -> b.span().end())
            .max(Comparator.naturalOrder())
            .orElse(start);
    return new DayBars(plan.hours(), start, last, rows);
  }

  private static Row row(ScheduledStep step, boolean critical, DayPlan plan) {
    List<Bar> bars = new ArrayList<>();
    step.spans().forEach(s -> bars.add(new Bar(Kind.WORK, s)));
    nextWait(step, plan).ifPresent(w -> addWait(bars, step, w));
    step.task()
        .keepOut()
        .ifPresent(
            k ->
                bars.add(
                    new Bar(
                        Kind.KEEP_OUT, new TimeSpan(step.start(), step.end().plus(k.after())))));
    WorkStep task = step.task();
    return new Row(task.name(), task.type().areaId(), task.area(), critical, bars);
  }

  private static void addWait(List<Bar> bars, ScheduledStep step, StepWait w) {
    LocalDateTime open = step.end().plus(w.atLeast());
    if (!w.atLeast().isZero()) {
      bars.add(new Bar(Kind.DRYING, new TimeSpan(step.end(), open)));
    }
    w.atMost()
        .ifPresent(m -> bars.add(new Bar(Kind.WINDOW, new TimeSpan(open, step.end().plus(m)))));
  }

  /** The wait on this step whose window opens first. */
  private static Optional<StepWait> nextWait(ScheduledStep step, DayPlan plan) {
    return plan.steps().stream()
        .flatMap(s -> s.task().waits().stream())
        .filter(w -> w.after().equals(step.task().id()))
        .min(Comparator.comparing(StepWait::atLeast));
  }
}
