package slabwright.work.days;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** When other trades stay off a floor area, and why. */
public record KeepOutPeriod(String area, String reason, TimeSpan span) {

  /** Every keep-out time of the plan, touching ones of one area joined, in time order. */
  public static List<KeepOutPeriod> of(DayPlan plan) {
    List<KeepOutPeriod> all = new ArrayList<>();
    for (ScheduledStep step : plan.steps()) {
      step.task().keepOut().ifPresent(k -> add(all, step, k));
    }
    all.sort(Comparator.comparing((KeepOutPeriod o) -> o.span().start()));
    return List.copyOf(all);
  }

  private static void add(List<KeepOutPeriod> all, ScheduledStep step, KeepOut k) {
    KeepOutPeriod next =
        new KeepOutPeriod(
            step.task().area(), k.reason(), new TimeSpan(step.start(), step.end().plus(k.after())));
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).joins(next)) {
        next = all.remove(i--).joined(next);
      }
    }
    all.add(next);
  }

  private boolean joins(KeepOutPeriod o) {
    return area.equals(o.area)
        && reason.equals(o.reason)
        && !span.end().isBefore(o.span.start())
        && !o.span.end().isBefore(span.start());
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
