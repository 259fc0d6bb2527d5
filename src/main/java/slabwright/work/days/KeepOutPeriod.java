package slabwright.work.days;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import slabwright.units.Message;

/** When other trades stay off a floor area, and why. */
public record KeepOutPeriod(String area, Message reason, TimeSpan span) {

  /**
   * Between two times to keep off, less than this is told as one with them: nobody else has work
   * for it, and somebody who reads the second line alone comes in between. Common practice, no
   * source.
   */
  private static final Duration WORTH_COMING = Duration.ofHours(1);

  /** Every keep-out time of the plan, near ones of one area joined, in time order. */
  public static List<KeepOutPeriod> of(DayPlan plan) {
    List<OfArea> all = new ArrayList<>();
    for (ScheduledStep step : plan.steps()) {
      step.task().keepOut().ifPresent(k -> add(all, step, k));
    }
    return all.stream()
        .map(OfArea::period)
        .sorted(Comparator.comparing((KeepOutPeriod o) -> o.span().start()))
        .toList();
  }

  /** A period with its floor area's id: two areas of one name are two. */
  private record OfArea(String areaId, KeepOutPeriod period) {
    boolean joins(OfArea o) {
      return areaId.equals(o.areaId) && period.joins(o.period);
    }

    OfArea joined(OfArea o) {
      return new OfArea(areaId, period.joined(o.period));
    }
  }

  private static void add(List<OfArea> all, ScheduledStep step, KeepOut k) {
    TimeSpan span = new TimeSpan(step.start(), step.end().plus(k.after()));
    WorkStep task = step.task();
    OfArea next =
        new OfArea(task.type().areaId(), new KeepOutPeriod(task.area(), k.reason(), span));
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).joins(next)) {
        next = all.remove(i--).joined(next);
      }
    }
    all.add(next);
  }

  private boolean joins(KeepOutPeriod o) {
    return reason.equals(o.reason)
        && isNear(span.end(), o.span.start())
        && isNear(o.span.end(), span.start());
  }

  private static boolean isNear(LocalDateTime end, LocalDateTime start) {
    return end.plus(WORTH_COMING).isAfter(start);
  }

  private KeepOutPeriod joined(KeepOutPeriod o) {
    return new KeepOutPeriod(
        area,
        reason,
        new TimeSpan(earlier(span.start(), o.span.start()), later(span.end(), o.span.end())));
  }

  private static LocalDateTime earlier(LocalDateTime a, LocalDateTime b) {
    return a.isBefore(b) ? a : b;
  }

  private static LocalDateTime later(LocalDateTime a, LocalDateTime b) {
    return a.isAfter(b) ? a : b;
  }
}
