package slabwright.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Points on straight segments, and rings cut along a line. */
public final class SegmentGeometry {
  private SegmentGeometry() {}

  /** The point of the segment nearest to {@code p}. */
  public static Vec nearest(Vec a, Vec b, Vec p) {
    Vec d = b.minus(a);
    double long2 = d.dot(d);
    double t = long2 == 0 ? 0 : Math.max(0, Math.min(1, p.minus(a).dot(d) / long2));
    return a.towards(b, t);
  }

  /** Distance from the point to the chain, mm; endless for an empty one. */
  public static double distance(Line line, Vec p) {
    double best = Double.POSITIVE_INFINITY;
    for (int i = 0; i + 1 < line.points().size(); i++) {
      Vec on = nearest(line.points().get(i), line.points().get(i + 1), p);
      best = Math.min(best, on.distanceTo(p));
    }
    return best;
  }

  /**
   * The part of a ring where a measure is not below 0 (Sutherland and Hodgman 1974). A ring that
   * falls into several parts stays one, joined along the cut, which fills the same.
   *
   * @param measure changes evenly along a straight side
   */
  public static List<Vec> cut(List<Vec> ring, ToDoubleFunction<Vec> measure) {
    List<Vec> kept = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      Vec a = ring.get(i);
      Vec b = ring.get((i + 1) % ring.size());
      double da = measure.applyAsDouble(a);
      double db = measure.applyAsDouble(b);
      if (da >= 0) {
        kept.add(a);
      }
      if ((da >= 0) != (db >= 0)) {
        kept.add(a.towards(b, da / (da - db)));
      }
    }
    return kept;
  }

  /** The foot of {@code p} on the endless line through {@code a} in a direction. */
  public static Vec foot(Vec a, Vec direction, Vec p) {
    Vec u = direction.unit();
    return a.plus(u.times(p.minus(a).dot(u)));
  }

  /** Where two endless lines meet; empty when they are parallel. */
  public static Optional<Vec> meeting(Vec a, Vec along, Vec b, Vec other) {
    double cross = along.unit().cross(other.unit());
    if (Math.abs(cross) < 1e-6) {
      return Optional.empty();
    }
    double t = b.minus(a).cross(other.unit()) / cross;
    return Optional.of(a.plus(along.unit().times(t)));
  }
}
