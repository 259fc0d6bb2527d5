package slabwright.drawing;

import java.util.List;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;

/** Straight lines against upright boxes (Liang and Barsky 1984). */
public final class SegmentClip {
  private SegmentClip() {}

  public static boolean meets(Vec a, Vec b, Bounds box) {
    return !inside(a, b, box).isEmpty();
  }

  /** The part of the line inside the box, as its two ends; empty when it misses the box. */
  static List<Vec> inside(Vec a, Vec b, Bounds box) {
    double[] t = {0, 1};
    boolean hit =
        cut(t, a.x() - b.x(), a.x() - box.minX())
            && cut(t, b.x() - a.x(), box.maxX() - a.x())
            && cut(t, a.y() - b.y(), a.y() - box.minY())
            && cut(t, b.y() - a.y(), box.maxY() - a.y());
    return hit ? List.of(a.towards(b, t[0]), a.towards(b, t[1])) : List.of();
  }

  /** Narrows the range t to where {@code p t <= q}; false when nothing is left. */
  private static boolean cut(double[] t, double p, double q) {
    if (p == 0) {
      return q >= 0;
    }
    double at = q / p;
    if (p < 0) {
      t[0] = Math.max(t[0], at);
    } else {
      t[1] = Math.min(t[1], at);
    }
    return t[0] <= t[1];
  }
}
