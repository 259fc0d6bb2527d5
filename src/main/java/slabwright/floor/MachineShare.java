package slabwright.floor;

import slabwright.shape.Region;
import slabwright.site.Machine;

/**
 * The floor that one machine of several grinds: the widest goes first, and each after it takes what
 * the wider ones left. The shares are disjoint; together they are the machines' floor.
 */
public record MachineShare(Machine machine, Region region) {
  /** Area in mm². */
  public double area() {
    return region.area();
  }
}
