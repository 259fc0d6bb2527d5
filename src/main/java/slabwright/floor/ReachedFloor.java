package slabwright.floor;

import slabwright.shape.Region;
import slabwright.site.Machine;

/**
 * What one machine can do on a floor.
 *
 * @param middle where the middle of its body can get to, the boxes outside the ways in included
 * @param ground the floor it grinds
 */
public record ReachedFloor(Machine machine, Region middle, Region ground) {
  /** Area in mm² that it grinds. */
  public double area() {
    return ground.area();
  }
}
