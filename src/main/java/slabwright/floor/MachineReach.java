package slabwright.floor;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.FillRule;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.site.FloorArea;
import slabwright.site.Machine;

/**
 * Machine reach. The drivable floor is extended through each way in by a box as wide as the opening
 * and body + clearance deep, eroded by half the body + clearance; the components that meet a box's
 * centre line are where the body's middle can be; dilated by half the grinding width they are what
 * is ground. A straight wall so keeps a strip of (body − grinding) / 2 + clearance.
 *
 * <p>The body is taken as a disc: it turns on the spot and fits wherever its width fits.
 */
final class MachineReach {
  /** A gap exactly as wide as body and clearances lets the machine through; mm. */
  static final double FIT = 0.01;

  private final FloorArea area;
  private final Region gross;
  private final Region drivable;
  private final Region grindable;
  private final double tolerance;

  MachineReach(FloorArea area, Region gross, Region drivable, Region grindable, double tolerance) {
    this.area = area;
    this.gross = gross;
    this.drivable = drivable;
    this.grindable = grindable;
    this.tolerance = tolerance;
  }

  Reach of(Machine machine) {
    Region middle = middle(machine);
    double half = half(machine);
    Region ground = middle.offset(machine.grinding().mm() / 2, tolerance).intersect(grindable);
    Region covered = middle.offset(half, tolerance).intersect(drivable);
    return new Reach(machine, middle, ground, covered);
  }

  /** Half the width of the gap that the machine needs. */
  static double half(Machine machine) {
    return machine.body().mm() / 2 + machine.clearance().mm();
  }

  private Region middle(Machine machine) {
    double depth = machine.body().mm() + machine.clearance().mm();
    List<WayIn> waysIn = WayIn.of(area, gross, depth, tolerance);
    List<Ring> rings = new ArrayList<>(drivable.rings());
    waysIn.forEach(w -> rings.addAll(w.box().rings()));
    Region extended = Region.of(rings, FillRule.NONZERO);
    List<Ring> reached = new ArrayList<>();
    for (Region part : extended.offset(FIT - half(machine), tolerance).parts()) {
      if (waysIn.stream().anyMatch(w -> part.meets(w.centre()))) {
        reached.addAll(part.rings());
      }
    }
    return Region.of(reached, FillRule.NONZERO);
  }
}
