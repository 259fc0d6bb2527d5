package slabwright.drawing;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;

/**
 * A ring cut to an upright box, side by side (Sutherland and Hodgman 1974). A ring that falls into
 * several parts stays one, joined along the box's sides, which fills the same.
 */
final class RingClip {
  private RingClip() {}

  static List<Vec> cut(List<Vec> ring, Bounds box) {
    List<Vec> left = half(ring, new Vec(1, 0), box.minX());
    left = half(left, new Vec(-1, 0), -box.maxX());
    left = half(left, new Vec(0, 1), box.minY());
    return half(left, new Vec(0, -1), -box.maxY());
  }

  /** What lies where {@code p dot out >= limit}. */
  private static List<Vec> half(List<Vec> ring, Vec out, double limit) {
    List<Vec> kept = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      Vec a = ring.get(i);
      Vec b = ring.get((i + 1) % ring.size());
      double da = a.dot(out) - limit;
      double db = b.dot(out) - limit;
      if (da >= 0) {
        kept.add(a);
      }
      if ((da >= 0) != (db >= 0)) {
        kept.add(a.towards(b, da / (da - db)));
      }
    }
    return kept;
  }
}
