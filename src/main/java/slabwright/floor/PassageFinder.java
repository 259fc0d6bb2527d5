package slabwright.floor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import slabwright.shape.Line;
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
    for (Line gap : GapFinder.find(plan.floorOf(rules::isDrivable), widest)) {
      machines.forEach(m -> all.add(MachinePassage.of(m, Optional.empty(), gap, gap.length())));
    }
    return all;
  }
}
