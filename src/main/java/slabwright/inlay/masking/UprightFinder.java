package slabwright.inlay.masking;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.Overspray;

/**
 * Where mist meets something upright, and how high.
 *
 * <p>A fan whose edge falls the reach R away on the floor meets an upright at distance a at height
 * (R − a) / tan(θ/2), but never above the nozzle.
 */
final class UprightFinder {
  private static final double STEP = 20;

  private final Region openings;
  private final Overspray overspray;
  private final Region reached;

  /**
   * @param reached where mist lands on the floor
   */
  UprightFinder(Region openings, Region reached, Overspray overspray) {
    this.openings = openings;
    this.reached = reached;
    this.overspray = overspray;
  }

  List<UprightMasking> on(FloorAround around) {
    List<UprightMasking> found = new ArrayList<>();
    for (FloorAround.UprightObstacle standing : around.upright()) {
      for (Line stretch : reached.clip(standing.foot())) {
        found.add(new UprightMasking(standing.what(), stretch, height(standing, stretch)));
      }
    }
    return found;
  }

  private OptionalDouble height(FloorAround.UprightObstacle standing, Line stretch) {
    OptionalDouble mist = OptionalDouble.empty();
    if (overspray instanceof Overspray.Fan fan) {
      mist = OptionalDouble.of(mistHeight(fan, nearest(stretch)));
    }
    if (mist.isEmpty() || standing.height().isEmpty()) {
      return mist.isPresent() ? mist : standing.height();
    }
    return OptionalDouble.of(Math.min(mist.getAsDouble(), standing.height().getAsDouble()));
  }

  private static double mistHeight(Overspray.Fan fan, double away) {
    double slope = Math.tan(Math.toRadians(fan.fanDegrees() / 2));
    double top = fan.height().mm();
    return slope == 0 ? top : Math.min(top, Math.max(0, (fan.reachMm() - away) / slope));
  }

  private double nearest(Line stretch) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i + 1 < stretch.points().size(); i++) {
      Vec a = stretch.points().get(i);
      Vec b = stretch.points().get(i + 1);
      int steps = (int) Math.ceil(a.distanceTo(b) / STEP) + 1;
      for (int k = 0; k <= steps; k++) {
        least = Math.min(least, openings.distanceTo(a.towards(b, (double) k / steps)));
      }
    }
    return least;
  }
}
