package slabwright.figures;

import java.util.List;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.ReachedFloor;
import slabwright.site.Machine;
import slabwright.words.Words;

/** How the reach curve is labelled, alike wherever it is drawn. */
public final class ReachCurveLabels {
  private ReachCurveLabels() {}

  /** The plan's machines in the order of their numbers, the widest first. */
  public static List<Machine> machines(FloorTakeoff takeoff) {
    return takeoff.asFound().reaches().stream().map(ReachedFloor::machine).toList();
  }

  /** What the curve is drawn for. */
  public static String about(FloorTakeoff takeoff, Words words) {
    return words.say("figures.reach-curve-labels.about", machines(takeoff).get(0).name());
  }
}
