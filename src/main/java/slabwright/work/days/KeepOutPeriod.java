package slabwright.work.days;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import slabwright.units.Message;

/**
 * When other trades stay off a floor area, and why.
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
        .flatMap(s -> s.task().keepOut().stream().map(k -> OfArea.of(s, k)))
        .sorted(Comparator.comparing((OfArea o) -> o.period.span.start()))
        .forEach(o -> add(joined, o));
    return joined.stream().map(OfArea::period).toList();
  }

  /** A period with its floor area's id: two areas of one name are two. */
  private record OfArea(String areaId, KeepOutPeriod period) {
    static OfArea of(ScheduledStep step, KeepOut k) {
      TimeSpan span = new TimeSpan(step.start(), step.end().plus(k.after()));
      return new OfArea(
          step.task().type().areaId(),
          new KeepOutPeriod(step.task().area(), List.of(k.reason()), span));
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
