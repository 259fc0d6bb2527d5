package slabwright.floor.reach;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import slabwright.floor.FloorArrangement;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.GrindingOp;
import slabwright.floor.GrindingRules;
import slabwright.floor.MachineReach;
import slabwright.floor.ReachedFloor;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Machine;
import slabwright.site.OutlineShape;

/**
 * Every doorway, every gap that is narrow for some machine of the plan and every bend that stops
 * one, once for each machine; trenches are taken as levelled.
 */
final class PassageFinder {
  /** Gaps of so many times what the widest machine needs are no matter. */
  private static final double NARROW = 1.5;

  /** A corridor's narrowest place so many bodies off is told with its bend. */
  private static final double NEAR = 4;

  /** What is lost to a long body ends so near to what it gets to, mm. */
  private static final double MEETS = 60;

  private PassageFinder() {}

  /**
   * Doorways in the plan's order, then gaps from the narrowest, then bends; widest machine first.
   */
  static List<MachinePassage> find(FloorTakeoff takeoff, BooleanSupplier cancelled) {
    List<MachinePassage> all = new ArrayList<>();
    List<Machine> machines =
        takeoff.levelled().reaches().stream().map(ReachedFloor::machine).toList();
    if (machines.isEmpty()) {
      return all;
    }
    FloorArea area = takeoff.area();
    OutlineShape shape = OutlineShape.of(area.outline(), takeoff.tolerance());
    for (Doorway d : area.doorways()) {
      Line opening = shape.doorway(d);
      if (opening.points().size() > 1) {
        double width = Math.min(d.clear(), opening.length());
        machines.forEach(m -> all.add(MachinePassage.of(m, Optional.of(d), opening, width)));
      }
    }
    FloorArrangement plan = new FloorArrangement(area, takeoff.tolerance(), cancelled);
    double widest = NARROW * machines.stream().mapToDouble(Machine::passage).max().orElse(0);
    GrindingRules rules = new GrindingRules(plan, true);
    Region drivable = plan.floorOf(rules::isDrivable);
    List<Line> gaps = GapFinder.find(drivable, widest);
    for (Line gap : gaps) {
      machines.forEach(m -> all.add(MachinePassage.of(m, Optional.empty(), gap, gap.length())));
    }
    MachineReach reach = new GrindingOp(plan, true, takeoff.tolerance(), cancelled).reach();
    takeoff.levelled().reaches().forEach(r -> bends(r, reach, drivable, gaps, all));
    return all;
  }

  private static void bends(
      ReachedFloor floor,
      MachineReach reach,
      Region drivable,
      List<Line> gaps,
      List<MachinePassage> all) {
    Machine machine = floor.machine();
    double body = machine.body().mm();
    List<Region> lost =
        floor.lost().stream()
            .filter(l -> Math.max(l.bounds().width(), l.bounds().height()) > body / 2)
            .toList();
    if (lost.isEmpty()) {
      return;
    }
    double length = machine.travel().length().orElseThrow().mm();
    // In a corridor as wide as its diagonal it turns on the spot: what stops it is narrower.
    double diagonal = Math.hypot(machine.passage(), length + 2 * machine.passing().mm());
    List<Line> wider = GapFinder.find(drivable, diagonal);
    for (Region region : lost) {
      Vec where = stuck(region, floor.middle());
      Vec side = reach.nearestObstacle(where);
      double width =
          width(where, gaps, NEAR * body)
              .orElse(width(where, wider, NEAR * body).orElse(2 * where.distanceTo(side)));
      Line across = Line.of(side, side.plus(where.minus(side).unit().times(width)));
      double spare = longest(machine, region.labelPoint(), reach) - length;
      all.add(
          new MachinePassage(
              machine, MachinePassage.Kind.BEND, Optional.empty(), where, across, width, spare));
    }
  }

  /** The narrowest gap near a place. */
  private static OptionalDouble width(Vec where, List<Line> gaps, double near) {
    return gaps.stream()
        .filter(g -> g.points().get(0).towards(g.points().get(1), 0.5).distanceTo(where) < near)
        .mapToDouble(Line::length)
        .min();
  }

  /** Where it stands when it gets no farther. */
  private static Vec stuck(Region lost, Region middle) {
    Region meeting = lost.offset(MEETS, MEETS / 10).intersect(middle);
    return meeting.parts().stream()
        .max(Comparator.comparingDouble(Region::area))
        .map(Region::labelPoint)
        .orElseGet(
            () ->
                middle.isEmpty() ? lost.labelPoint() : lost.nearestOnBoundary(middle.labelPoint()));
  }

  /** The longest body of the machine's width that gets to a place, to the nearest 2 mm below. */
  private static double longest(Machine machine, Vec place, MachineReach reach) {
    double low = machine.body().mm();
    double high = machine.travel().length().orElseThrow().mm();
    while (high - low > 2) {
      double length = (low + high) / 2;
      if (reach.turned(machine, length).lost().stream().anyMatch(l -> l.contains(place))) {
        high = length;
      } else {
        low = length;
      }
    }
    return low;
  }
}
