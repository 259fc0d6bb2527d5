package slabwright.shape;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;

/**
 * A ring with fewer corners, by the corner farthest from each chord (D. Douglas and T. Peucker,
 * 1973). Takes each ring by itself, so what comes out may touch or cross: for looking at shapes,
 * not for cutting them.
 */
final class RingSimplifier {
  private final List<Vec> points;
  private final double tolerance;

  private record Stretch(int from, int to) {}

  private RingSimplifier(Ring ring, double tolerance) {
    points = new ArrayList<>(ring.points());
    points.add(ring.points().get(0));
    this.tolerance = tolerance;
  }

  /**
   * No corner that is left out lies farther than the tolerance from the new outline, beside the
   * ring's first corner twice that.
   */
  static Ring simplify(Ring ring, double tolerance) {
    return ring.points().size() < 4 ? ring : new RingSimplifier(ring, tolerance).run();
  }

  private Ring run() {
    BitSet kept = new BitSet(points.size());
    kept.set(0);
    Deque<Stretch> open = new ArrayDeque<>();
    open.push(new Stretch(0, points.size() - 1));
    while (!open.isEmpty()) {
      Stretch s = open.pop();
      int far = farthest(s);
      if (far >= 0) {
        kept.set(far);
        open.push(new Stretch(s.from, far));
        open.push(new Stretch(far, s.to));
      }
    }
    List<Vec> left = new ArrayList<>();
    kept.stream().forEach(i -> left.add(points.get(i)));
    if (left.size() > 3 && isFlat(left.get(left.size() - 1), left.get(0), left.get(1))) {
      left.remove(0);
    }
    return new Ring(left);
  }

  private boolean isFlat(Vec before, Vec at, Vec after) {
    return SegmentGeometry.nearest(before, after, at).distanceTo(at) <= tolerance;
  }

  /** The corner farthest from the stretch's chord, -1 when none is too far. */
  private int farthest(Stretch s) {
    int far = -1;
    double most = tolerance;
    Vec a = points.get(s.from);
    Vec b = points.get(s.to);
    for (int i = s.from + 1; i < s.to; i++) {
      double off = SegmentGeometry.nearest(a, b, points.get(i)).distanceTo(points.get(i));
      if (off > most) {
        most = off;
        far = i;
      }
    }
    return far;
  }
}
