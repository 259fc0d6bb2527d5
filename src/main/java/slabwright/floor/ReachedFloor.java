package slabwright.floor;

import java.util.List;
import slabwright.shape.Region;
import slabwright.site.Machine;

/**
 * What one machine can do on a floor.
 *
 * @param rolls where the middle of its body can be as it drives, the boxes outside the ways in
 *     included
 * @param middle where the middle of its body can be while it grinds, the boxes outside the ways in
 *     included
 * @param ground the floor it grinds
 * @param lost pieces of floor for its middle that its width gets to and its length does not
 */
public record ReachedFloor(
    Machine machine, Region rolls, Region middle, Region ground, List<Region> lost) {
  public ReachedFloor {
    lost = List.copyOf(lost);
  }

  /** Area in mm² that it grinds. */
  public double area() {
    return ground.area();
  }
}
