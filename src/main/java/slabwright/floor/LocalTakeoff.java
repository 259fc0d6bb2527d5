package slabwright.floor;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Machine;

/**
 * The figures of a floor inside one window, worked out as the take-off works out the whole, of
 * nothing but what has a say there. Net floor and edges are those of all that was noded, also of
 * what lies beyond the window and means nothing: where the floor did not change, that is the same
 * before and after. Cut off at the window's sides, an edge that runs nearly along one would count
 * longer or shorter by many times what noding bends it.
 *
 * @param figures good for nothing but their difference to those of another floor in the window
 * @param rooms how what machines get to hangs together there, machine by machine
 */
record LocalTakeoff(FloorFigures figures, List<WindowAccess.Rooms> rooms) {
  /**
   * What is known of the whole floor.
   *
   * @param area its outline and doorways; which marks it has does not matter
   * @param gross the inside of its outline
   * @param reachedBefore whether a place where nothing changed was got to before the change
   * @param ways in, by the depth of their boxes; filled as they are asked for
   */
  record Whole(
      FloorArea area,
      Region gross,
      BiPredicate<Machine, Vec> reachedBefore,
      Map<Double, List<WayIn>> ways) {
    Whole(FloorArea area, Region gross, BiPredicate<Machine, Vec> reachedBefore) {
      this(area, gross, reachedBefore, new HashMap<>());
    }

    /** The ways in with boxes of a depth in mm. */
    List<WayIn> waysIn(double depth) {
      return ways.computeIfAbsent(depth, d -> WayIn.of(area, gross, d, FloorTakeoff.TOLERANCE));
    }
  }

  static LocalTakeoff of(
      FloorArea area, FloorWindow window, Whole whole, BooleanSupplier cancelled) {
    double tolerance = FloorTakeoff.TOLERANCE;
    FloorArrangement bare = FloorArrangement.about(window.input(), area, tolerance, cancelled);
    GrindingOp grinder = new GrindingOp(bare, false, tolerance, cancelled);
    WindowAccess access = new WindowAccess(window, whole);
    MachineReach reach = grinder.reach(whole.gross(), access);
    List<Region> heads = area.machines().stream().map(reach::head).toList();
    FloorArrangement plan = bare.withSweeps(heads, cancelled);
    Map<Boolean, Region> work = work(plan, new GrindingRules(bare, false), heads.size());
    FloorFigures figures =
        new FloorFigures(
            bare.floorOf(o -> true).area(),
            EdgeClassifier.lengths(bare),
            areaIn(work, true, window),
            areaIn(work, false, window));
    return new LocalTakeoff(figures, access.rooms());
  }

  /** Machines' work (true) and hand work; of which kind that is nobody asks here. */
  private static Map<Boolean, Region> work(FloorArrangement plan, GrindingRules rules, int heads) {
    return plan.partitionFloor(
        (o, swept) ->
            rules.isGround(o)
                ? Optional.of(rules.isGrindable(o) && IntStream.range(0, heads).anyMatch(swept))
                : Optional.<Boolean>empty());
  }

  private static double areaIn(Map<Boolean, Region> work, boolean machine, FloorWindow window) {
    return window.figures().area(work.getOrDefault(machine, Region.empty()));
  }
}
