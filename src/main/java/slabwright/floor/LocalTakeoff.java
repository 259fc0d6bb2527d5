package slabwright.floor;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import slabwright.shape.Region;
import slabwright.site.FloorArea;
import slabwright.site.Machine;

/**
 * The figures of a floor inside one window, worked out as the take-off works out the whole, of
 * nothing but what has a say there. Net floor and edges are those of all that was noded, also of
 * what lies beyond the window and means nothing: where the floor did not change, that is the same
 * before and after, and so is the work there. Cut off at the window's sides, an edge that runs
 * nearly along one would count longer or shorter by many times what noding bends it.
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
   * @param before the floor that is followed
   * @param ways in, by the depth of their boxes; filled as they are asked for
   */
  record Whole(FloorArea area, Region gross, FloorBefore before, Map<Double, List<WayIn>> ways) {
    Whole(FloorArea area, Region gross, FloorBefore before) {
      this(area, gross, before, new HashMap<>());
    }

    /** The ways in with boxes of a depth in mm. */
    List<WayIn> waysIn(double depth) {
      return ways.computeIfAbsent(depth, d -> WayIn.of(area, gross, d, FloorTakeoff.TOLERANCE));
    }
  }

  static LocalTakeoff of(
      FloorArea area, FloorWindow window, Whole whole, BooleanSupplier cancelled) {
    double tolerance = FloorTakeoff.TOLERANCE;
    FloorArrangement bare =
        FloorArrangement.about(window.input(), area, whole.before()::form, tolerance, cancelled);
    GrindingRules rules = new GrindingRules(bare, false);
    Map<Boolean, Region> floor =
        bare.partitionFloor((o, swept) -> Optional.of(rules.isDrivable(o)));
    WindowAccess access = new WindowAccess(window, whole);
    MachineReach reach =
        new MachineReach(area, whole.gross(), region(floor, true), tolerance, access, cancelled);
    List<Region> heads = new ArrayList<>(whole.before().passed(window));
    for (Machine machine : area.machines()) {
      Region works = worksFrom(reach.grindsFrom(machine), window);
      heads.add(works.offset(machine.grinding().mm() / 2, tolerance));
    }
    FloorArrangement plan = bare.withSweeps(heads, window.figures(), cancelled);
    Map<Boolean, Region> work = work(plan, rules, heads.size());
    FloorFigures figures =
        new FloorFigures(
            region(floor, true).area() + region(floor, false).area(),
            EdgeClassifier.lengths(bare),
            region(work, true).area(),
            region(work, false).area());
    return new LocalTakeoff(figures, access.rooms());
  }

  private static Region worksFrom(Region middle, FloorWindow window) {
    return window.works().equals(window.access())
        ? middle
        : middle.intersect(window.works().region());
  }

  /** Machines' work (true) and hand work; of which kind that is nobody asks here. */
  private static Map<Boolean, Region> work(FloorArrangement plan, GrindingRules rules, int heads) {
    return plan.partitionFloor(
        (o, swept) ->
            rules.isGround(o)
                ? Optional.of(rules.isGrindable(o) && IntStream.range(0, heads).anyMatch(swept))
                : Optional.<Boolean>empty());
  }

  private static Region region(Map<Boolean, Region> parts, boolean which) {
    return parts.getOrDefault(which, Region.empty());
  }
}
