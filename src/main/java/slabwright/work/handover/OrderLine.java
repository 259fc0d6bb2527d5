package slabwright.work.handover;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.site.Finish;
import slabwright.work.AreaWorkPlan;
import slabwright.work.WorkPlan;
import slabwright.work.book.ProductKind;
import slabwright.work.book.ShopBook;
import slabwright.work.coat.CoatPlan;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.step.StepKind;
import slabwright.work.step.StepType;

/**
 * Something to order, and by when it is wanted on site.
 *
 * @param neededOn the first day that uses it; empty while the job has no dates
 */
public record OrderLine(BuyLine buy, Optional<LocalDate> neededOn) {
  /** Everything to order, what is wanted first on top. */
  public static List<OrderLine> of(WorkPlan plan) {
    Optional<DayPlan> days = plan.days().maybe().filter(d -> plan.dated());
    return BuyList.of(plan).stream()
        .map(b -> new OrderLine(b, days.flatMap(d -> first(plan, b, d))))
        .sorted(Comparator.comparing(o -> o.neededOn().orElse(LocalDate.MAX)))
        .toList();
  }

  private static Optional<LocalDate> first(WorkPlan plan, BuyLine buy, DayPlan days) {
    return days.steps().stream()
        .filter(
            s -> plan.areas().stream().anyMatch(a -> uses(plan.book(), a, buy, s.task().type())))
        .map(ScheduledStep::start)
        .findFirst()
        .map(t -> t.toLocalDate());
  }

  private static boolean uses(ShopBook book, AreaWorkPlan area, BuyLine buy, StepType step) {
    if (!step.isOn(area.id())) {
      return false;
    }
    Optional<CoatPlan> coat = area.coat(buy.product());
    if (coat.isEmpty()) {
      return fills(step.kind())
          .flatMap(book::first)
          .filter(p -> p.id().equals(buy.product()))
          .isPresent();
    }
    boolean sampled = step.kind() == StepKind.SAMPLE_PANEL;
    boolean mist = coat.get().job().target() == Finish.Target.INLAY;
    return sampled
        || (mist && step.kind() == StepKind.MIST_COAT)
        || step.coat().filter(n -> n.place() == coat.get().job().place()).isPresent();
  }

  private static Optional<ProductKind> fills(StepKind kind) {
    return switch (kind) {
      case FILL_GAPS -> Optional.of(ProductKind.FILLER);
      case FILL_TRENCH -> Optional.of(ProductKind.LEVELLER);
      default -> Optional.empty();
    };
  }
}
