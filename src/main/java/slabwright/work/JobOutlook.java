package slabwright.work;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.units.Message;
import slabwright.work.book.Figure;
import slabwright.work.coat.CoatPlan;
import slabwright.work.days.DayPlan;

/**
 * How the job stands: what is held, and whether it can start at all.
 *
 * @param order all steps one after the other as if nothing stood against any; its order and lengths
 *     hold, its dates are nobody's
 * @param held steps that are not done as the plan stands, in the order of the steps
 * @param cannotStart why the job can't start as planned; empty when it can
 * @param closed when floor areas are closed for vapour
 * @param checks what has to be checked, and what the order of floors rests on; of the days of coats
 *     only with dates
 */
@RecordBuilder
public record JobOutlook(
    Figure<DayPlan> order,
    List<HeldStep> held,
    List<Message> cannotStart,
    List<ClosedAir> closed,
    List<DayCheck> checks)
    implements JobOutlookBuilder.With {
  public JobOutlook {
    held = List.copyOf(held);
    cannotStart = List.copyOf(cannotStart);
    closed = List.copyOf(closed);
    checks = List.copyOf(checks);
  }

  public boolean canStart() {
    return cannotStart.isEmpty();
  }

  /** Whether the first of a floor's coats of a product is held. */
  public boolean isHeld(String areaId, CoatPlan coat) {
    return hold(areaId + "/" + coat.stepId(1)).isPresent();
  }

  /** M³/min of fresh air that frees every step of a floor that such air frees; empty for none. */
  public OptionalDouble freeingAir(String areaId) {
    return held.stream()
        .filter(h -> h.area().equals(areaId))
        .flatMapToDouble(h -> h.freeingAir().stream())
        .max();
  }

  /** Why a step is held, if it is. */
  public Optional<HeldStep> hold(String stepId) {
    return held.stream().filter(h -> h.step().equals(stepId)).findFirst();
  }
}
