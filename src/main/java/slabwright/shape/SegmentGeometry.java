package slabwright.shape;

import java.util.Optional;

/** Points on straight segments, for snapping and picking. */
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
