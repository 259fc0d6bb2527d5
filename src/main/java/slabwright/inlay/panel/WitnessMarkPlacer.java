package slabwright.inlay.panel;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/** Finds clear places for witness marks along laps. */
final class WitnessMarkPlacer {
  private static final double EVERY = 1000;
  private static final double STEP = 10;
  private static final double LONGEST_ARM = 6;
  private static final double SHORTEST_ARM = 2;

  private final Region openings;
  private final StripDirection turn;
  private final double arm;
  private final double clear;

  WitnessMarkPlacer(Region openings, StripDirection turn, double overlap) {
    this.openings = openings;
    this.turn = turn;
    this.arm = Math.max(SHORTEST_ARM, Math.min(LONGEST_ARM, overlap / 2 - 1));
    this.clear = 2 * arm;
  }

  /** Near both ends of the lap and about every metre between, where no stencil is open. */
  List<WitnessMark> on(Bounds lap, boolean joint) {
    StripDirection way = joint ? other() : turn;
    double length = way.along(lap);
    double low = way == StripDirection.DOWN ? lap.minY() : lap.minX();
    int stretches = Math.max(1, (int) Math.round(length / EVERY));
    List<WitnessMark> marks = new ArrayList<>();
    double used = Double.NEGATIVE_INFINITY;
    for (int k = 0; k <= stretches; k++) {
      double wish = low + 2 * clear + k * (length - 4 * clear) / stretches;
      Vec at = nearest(way, lap, wish, Math.max(used, low), low + length);
      if (at != null) {
        marks.add(new WitnessMark(at, arm));
        used = way.v(at) + 3 * clear;
      }
    }
    return marks;
  }

  private StripDirection other() {
    return turn == StripDirection.DOWN ? StripDirection.ACROSS : StripDirection.DOWN;
  }

  /** The clear place nearest to the wish within half a metre, or null. */
  private Vec nearest(StripDirection way, Bounds lap, double wish, double low, double high) {
    double middle = way.u(lap.middle());
    for (double off = 0; off <= EVERY / 2; off += STEP) {
      for (int side = 1; side >= -1; side -= 2) {
        double v = wish + side * off;
        Vec at = way.point(middle, v);
        if (v >= low + clear && v <= high - clear && openings.distanceTo(at) >= clear) {
          return at;
        }
      }
    }
    return null;
  }
}
