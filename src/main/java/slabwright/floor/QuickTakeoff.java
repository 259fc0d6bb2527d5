package slabwright.floor;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import slabwright.shape.Region;
import slabwright.site.FloorArea;

/**
 * What of a take-off follows a drag: net floor, edges, and who grinds what with the trenches as
 * they lie. Areas in mm², lengths in mm, the frame is the site's.
 *
 * @param tolerance how far arcs may stray, mm; its figures are only near above {@link
 *     FloorTakeoff#TOLERANCE}
 * @param net area of the net floor
 */
public record QuickTakeoff(
    FloorArea area, double tolerance, double net, List<Edge> edges, GrindingSplit asFound) {
  /** How far arcs may stray in a rough glance, mm: a machine's turn in half a dozen pieces. */
  public static final double ROUGH = 8;

  public QuickTakeoff {
    edges = List.copyOf(edges);
  }

  /** All else follows from the floor area and the tolerance. */
  @Override
  public boolean equals(Object o) {
    return o == this
        || (o instanceof QuickTakeoff g && tolerance == g.tolerance && area.equals(g.area));
  }

  @Override
  public int hashCode() {
    return area.hashCode();
  }

  /** What of a take-off that has been worked out is glanced at. */
  public static QuickTakeoff of(FloorTakeoff t) {
    return new QuickTakeoff(t.area(), t.tolerance(), t.net().area(), t.edges(), t.asFound());
  }

  /**
   * Worked out roughly, at a small part of a take-off's price: nothing of levelled trenches, and
   * arcs of few pieces.
   *
   * @throws CancellationException when {@code cancelled} turned true
   */
  public static QuickTakeoff approximate(FloorArea area, BooleanSupplier cancelled) {
    FloorArrangement bare = new FloorArrangement(area, ROUGH, cancelled);
    GrindingOp grinder = new GrindingOp(bare, false, ROUGH, cancelled);
    List<MachineReach.Sweep> sweeps = grinder.sweeps();
    FloorArrangement plan = bare.withSweeps(MachineReach.swept(sweeps), cancelled);
    Region net = plan.floorOf(o -> true);
    GrindingSplit asFound = grinder.compute(plan, sweeps, 0);
    return new QuickTakeoff(area, ROUGH, net.area(), new EdgeClassifier(bare).edges(), asFound);
  }

  /** Whether its figures are those of the take-off, not only near them. */
  public boolean isExact() {
    return tolerance <= FloorTakeoff.TOLERANCE;
  }

  /** Its figures. */
  public FloorFigures figures() {
    return FloorFigures.of(net, edges, asFound);
  }
}
