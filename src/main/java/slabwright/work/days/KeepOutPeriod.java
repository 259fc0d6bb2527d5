package slabwright.work.days;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slabwright.units.Message;

/**
 * When other trades stay off a floor area, and why; it ends no earlier than the work does as it is
 * told, in quarter hours.
 *
 * @param reasons in the order in which they begin, each once
 */
public record KeepOutPeriod(String area, List<Message> reasons, TimeSpan span) {
  public KeepOutPeriod {
    reasons = List.copyOf(reasons);
  }

  /**
   * Between two times to keep off, less than this is told as one with them, whatever the reasons:
   * nobody else has work for it, and somebody who reads one line alone comes in during the other.
   * Common practice, no source.
   */
  private static final Duration WORTH_COMING = Duration.ofHours(1);

  /** Every keep-out time of the plan, near ones of one area joined, in time order. */
  public static List<KeepOutPeriod> of(DayPlan plan) {
    List<OfArea> joined = new ArrayList<>();
    plan.steps().stream()
        .flatMap(s -> s.task().keepOut().stream().flatMap(k -> OfArea.of(s, k)))
        .sorted(Comparator.comparing((OfArea o) -> o.period.span.start()))
        .forEach(o -> add(joined, o));
    return joined.stream().map(OfArea::period).toList();
  }

  /** Until when others are kept off for one step alone; empty where they are not. */
  public static Optional<LocalDateTime> until(ScheduledStep step) {
    return step.task().keepOut().map(k -> told(step).plus(k.after()));
  }

  /**
   * When a step may follow another, as it is told: dry is one hour on all papers, so never before
   * others may come back for the same drying, and never after the step is planned.
   */
  public static LocalDateTime next(ScheduledStep done, ScheduledStep after, StepWait wait) {
    LocalDateTime dry = done.end().plus(wait.atLeast());
    boolean same = done.task().keepOut().filter(k -> k.after().equals(wait.atLeast())).isPresent();
    return until(done)
        .filter(t -> same && t.isAfter(dry))
        .map(t -> t.isBefore(after.start()) ? t : after.start())
        .orElse(dry);
  }

  /** The end of the work as the crew is told it, who may begin a little later than planned. */
  private static LocalDateTime told(ScheduledStep step) {
    return step.spans().get(step.spans().size() - 1).toldAsWork().end();
  }

  /** A period with its floor area's id: two areas of one name are two. */
  private record OfArea(String areaId, KeepOutPeriod period) {
    /** Of the floor area of a step, and of those that its air gets to. */
    static Stream<OfArea> of(ScheduledStep step, KeepOut k) {
      String area = step.task().area();
      TimeSpan span = new TimeSpan(step.start(), told(step).plus(k.after()));
      OfArea own =
          new OfArea(
              step.task().type().areaId(), new KeepOutPeriod(area, List.of(k.reason()), span));
      Message in = Message.of("work.keep-out-op.solvent-beside", area);
      return Stream.concat(
          Stream.of(own),
          k.beside().stream()
              .map(b -> new OfArea(b.areaId(), new KeepOutPeriod(b.area(), List.of(in), span))));
    }

    boolean isBefore(OfArea o) {
      LocalDateTime start = o.period.span.start();
      return areaId.equals(o.areaId) && period.span.end().plus(WORTH_COMING).isAfter(start);
    }
  }

  /** Joins it to the last of its area where that is near; all of {@code joined} begin before it. */
  private static void add(List<OfArea> joined, OfArea next) {
    for (int i = 0; i < joined.size(); i++) {
      OfArea o = joined.get(i);
      if (o.isBefore(next)) {
        joined.set(i, new OfArea(o.areaId, o.period.joined(next.period)));
        return;
      }
    }
    joined.add(next);
  }

  private KeepOutPeriod joined(KeepOutPeriod later) {
    List<Message> all = new ArrayList<>(reasons);
    later.reasons.stream().filter(r -> !all.contains(r)).forEach(all::add);
    LocalDateTime end = span.end().isAfter(later.span.end()) ? span.end() : later.span.end();
    return new KeepOutPeriod(area, all, new TimeSpan(span.start(), end));
  }
}
