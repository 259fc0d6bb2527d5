package slabwright.floor;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.BooleanSupplier;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Machine;

/**
 * The figures of a floor inside one window, worked out as the take-off works out the whole, of
 * nothing but what has a say there.
 *
 * @param rooms how what machines get to hangs together there, machine by machine
 */
record LocalTakeoff(FloorFigures figures, List<WindowAccess.Rooms> rooms) {
  /**
   * Worked out.
   *
   * @param gross the inside of the whole outline
   * @param reachedBefore whether a place where nothing changed was got to before the change
   */
  static LocalTakeoff of(
      FloorArea area,
      FloorWindow window,
      Region gross,
      BiPredicate<Machine, Vec> reachedBefore,
      BooleanSupplier cancelled) {
    double tolerance = FloorTakeoff.TOLERANCE;
    FloorArrangement bare = FloorArrangement.about(window.input(), area, tolerance, cancelled);
    GrindingOp grinder = new GrindingOp(bare, false, tolerance, cancelled);
    WindowAccess access = new WindowAccess(window, reachedBefore);
    List<MachineReach.Sweep> sweeps = grinder.sweeps(grinder.reach(gross, access));
    FloorArrangement plan = bare.withSweeps(MachineReach.swept(sweeps), cancelled);
    GrindingRules rules = new GrindingRules(bare, false);
    Map<Boolean, Region> work = new GrindingFaces(plan, rules, sweeps.size(), 0).byMachine();
    FloorFigures figures =
        new FloorFigures(
            plan.floorOf(o -> true).areaIn(window.figures()),
            EdgeClassifier.lengths(bare, window.figures()),
            areaIn(work, true, window),
            areaIn(work, false, window));
    return new LocalTakeoff(figures, access.rooms());
  }

  private static double areaIn(Map<Boolean, Region> work, boolean machine, FloorWindow window) {
    return Optional.ofNullable(work.get(machine)).map(r -> r.areaIn(window.figures())).orElse(0.0);
  }
}
