package slabwright.work.handover;

import java.util.List;
import slabwright.work.WorkPlan;

/**
 * Every paper that goes with the job.
 *
 * @param approvals one an inlay
 * @param reopening one a coated floor area
 */
public record Handovers(
    List<HandoverDocument> approvals,
    List<HandoverDocument> reopening,
    HandoverDocument loadList,
    HandoverDocument walkthrough) {
  public Handovers {
    approvals = List.copyOf(approvals);
    reopening = List.copyOf(reopening);
  }

  public static Handovers of(WorkPlan plan) {
    return new Handovers(
        plan.site().areas().stream()
            .flatMap(a -> a.inlays().stream().map(i -> PlacementApproval.of(plan.site(), a, i)))
            .toList(),
        plan.areas().stream()
            .flatMap(a -> Reopening.of(a, plan).stream())
            .map(r -> r.paper(plan))
            .toList(),
        LoadList.of(plan),
        Walkthrough.of(
            plan.site(), plan.areas().stream().flatMap(a -> a.stops().stream()).toList()));
  }
}
