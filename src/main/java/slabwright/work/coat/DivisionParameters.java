package slabwright.work.coat;

import java.time.Duration;
import java.util.List;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/**
 * Where a coat of a floor may be divided.
 *
 * @param floor to be coated
 * @param wayOut where the crew leaves
 * @param joints that are marked on it, mm
 * @param given lines drawn on the plan for this coat; they decide where there are any
 * @param day the longest time that is worked in one go
 */
public record DivisionParameters(
    Region floor, Vec wayOut, List<Line> joints, List<Line> given, Duration day) {
  public DivisionParameters {
    joints = List.copyOf(joints);
    given = List.copyOf(given);
  }
}
