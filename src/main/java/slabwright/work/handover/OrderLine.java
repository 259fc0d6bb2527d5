package slabwright.work.handover;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.site.Finish;
import slabwright.work.AreaWorkPlan;
import slabwright.work.WorkPlan;
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
    boolean coats = plan.areas().stream().anyMatch(a -> a.coat(buy.product()).isPresent());
    return days.steps().stream()
        .filter(s -> plan.areas().stream().anyMatch(a -> uses(a, buy, coats, s.task().type())))
        .map(ScheduledStep::start)
        .findFirst()
        .map(t -> t.toLocalDate());
  }

  /**
   * Whether a step of a floor uses it up.
   *
   * @param coats whether it is a coat's on any floor: then no gap is filled with it
   */
  private static boolean uses(AreaWorkPlan area, BuyLine buy, boolean coats, StepType step) {
    if (!step.isOn(area.id())) {
      return false;
    }
    Optional<CoatPlan> coat = area.coat(buy.product());
    if (coat.isEmpty()) {
      return !coats && fills(step);
    }
    boolean sampled = step.kind() == StepKind.SAMPLE_PANEL;
    boolean mist = coat.get().job().target() == Finish.Target.INLAY;
    return sampled
        || (mist && step.kind() == StepKind.MIST_COAT)
        || step.coat().filter(n -> n.place() == coat.get().job().place()).isPresent();
  }

  private static boolean fills(StepType step) {
    return step.kind() == StepKind.FILL_GAPS || step.kind() == StepKind.FILL_TRENCH;
  }
}
