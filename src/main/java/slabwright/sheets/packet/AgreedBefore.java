package slabwright.sheets.packet;

import java.util.List;
import slabwright.units.Message;
import slabwright.work.AreaResult;
import slabwright.work.WorkPlan;

/**
 * What a release agreed that the plan no longer says, for a change order.
 *
 * @param release its number
 * @param areas as they were, worked out
 * @param work by the shop book of today, so that only the plan makes the difference
 * @param changes what differs since, to be said with a capital; not empty
 */
public record AgreedBefore(
    int release, List<AreaResult> areas, WorkPlan work, List<Message> changes) {
  public AgreedBefore {
    areas = List.copyOf(areas);
    changes = List.copyOf(changes);
  }
}
