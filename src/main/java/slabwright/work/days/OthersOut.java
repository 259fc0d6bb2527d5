package slabwright.work.days;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** When other trades stay off a floor area, and why. */
public record OthersOut(String area, String reason, Span span) {

  /** Every keep-out time of the plan, touching ones of one area joined, in time order. */
  public static List<OthersOut> of(DayPlan plan) {
    List<OthersOut> all = new ArrayList<>();
    for (Placed step : plan.steps()) {
      step.task().keepOut().ifPresent(k -> add(all, step, k));
    }
    all.sort(Comparator.comparing((OthersOut o) -> o.span().start()));
    return List.copyOf(all);
  }

  private static void add(List<OthersOut> all, Placed step, KeepOut k) {
    OthersOut next =
        new OthersOut(
            step.task().area(), k.reason(), new Span(step.start(), step.end().plus(k.after())));
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).joins(next)) {
        next = all.remove(i--).joined(next);
      }
    }
    all.add(next);
  }

  private boolean joins(OthersOut o) {
    return area.equals(o.area)
        && reason.equals(o.reason)
        && !span.end().isBefore(o.span.start())
        && !o.span.end().isBefore(span.start());
  }

  private OthersOut joined(OthersOut o) {
    return new OthersOut(
        area,
        reason,
        new Span(earlier(span.start(), o.span.start()), later(span.end(), o.span.end())));
  }

  private static LocalDateTime earlier(LocalDateTime a, LocalDateTime b) {
    return a.isBefore(b) ? a : b;
  }

  private static LocalDateTime later(LocalDateTime a, LocalDateTime b) {
    return a.isAfter(b) ? a : b;
  }
}
