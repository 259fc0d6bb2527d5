package slabwright.floor;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Region;
import slabwright.site.Machine;

/**
 * The floor that one machine of several grinds: the widest goes first, and each after it takes what
 * the wider ones left. The shares are disjoint; together they are the machines' floor.
 */
public record MachineShare(Machine machine, Region region) {
  /** Who does what floor, the widest body first. */
  public static List<MachineShare> of(Grinding grinding) {
    List<MachineShare> shares = new ArrayList<>();
    Region done = Region.empty();
    for (Reach reach : grinding.reaches()) {
      shares.add(new MachineShare(reach.machine(), reach.ground().minus(done)));
      done = done.union(reach.ground());
    }
    return shares;
  }

  /** Area in mm². */
  public double area() {
    return region.area();
  }
}
