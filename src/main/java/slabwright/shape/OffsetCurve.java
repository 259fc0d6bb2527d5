package slabwright.shape;

import java.util.ArrayList;
import java.util.List;

/**
 * The raw curve at a distance from a ring: each side moved to its right (outward on a ring that
 * runs counter-clockwise), outer corners bridged by arcs, inner corners through the corner itself.
 * It may cross itself; the offset is where its winding number is positive (X. Chen and S. McMains,
 * "Polygon offsetting by computing winding numbers", 2005).
 */
final class OffsetCurve {
  /** Keeps the check of a dropped run short. */
  private static final int LONGEST_RUN = 32;

  private final double distance;
  private final double tolerance;
  private final List<Vec> out = new ArrayList<>();

  private OffsetCurve(double distance, double tolerance) {
    this.distance = distance;
    this.tolerance = tolerance;
  }

  static Ring of(Ring ring, double distance, double tolerance) {
    OffsetCurve curve = new OffsetCurve(distance, tolerance);
    List<Vec> points = curve.smoothed(distinct(ring.points()));
    int n = points.size();
    for (int i = 0; i < n && n > 1; i++) {
      curve.corner(points.get((i + n - 1) % n), points.get(i), points.get((i + 1) % n));
    }
    return new Ring(curve.out);
  }

  /**
   * Round a line that has some length: along its right side, round its end, and back along the
   * other.
   */
  static Ring around(Line line, double distance, boolean roundEnds, double tolerance) {
    OffsetCurve curve = new OffsetCurve(distance, tolerance);
    List<Vec> walk = distinct(line.points());
    if (walk.get(0).equals(walk.get(walk.size() - 1))) {
      walk.add(walk.get(1));
    }
    int far = walk.size() - 1;
    for (int i = far - 1; i > 0; i--) {
      walk.add(walk.get(i));
    }
    int n = walk.size();
    for (int i = 0; i < n; i++) {
      Vec before = walk.get((i + n - 1) % n);
      Vec after = walk.get((i + 1) % n);
      if (!roundEnds && (i == 0 || i == far)) {
        curve.sides(before, walk.get(i), after);
      } else {
        curve.corner(before, walk.get(i), after);
      }
    }
    return new Ring(curve.out);
  }

  private static List<Vec> distinct(List<Vec> points) {
    List<Vec> kept = new ArrayList<>(points.size());
    for (Vec p : points) {
      if (kept.isEmpty() || !kept.get(kept.size() - 1).equals(p)) {
        kept.add(p);
      }
    }
    return kept;
  }

  /**
   * Drops inner corners that lie within a quarter of the tolerance of a straight line across. An
   * inner arc narrower than the distance would else become a sheaf of crossing spokes.
   */
  private List<Vec> smoothed(List<Vec> points) {
    int n = points.size();
    List<Vec> kept = new ArrayList<>(n);
    int anchor = 0;
    for (int i = 0; i < n; i++) {
      Vec next = points.get((i + 1) % n);
      if (i == 0
          || i - anchor > LONGEST_RUN
          || !isInner(points.get(i - 1), points.get(i), next)
          || !isStraight(points, anchor, i, next)) {
        kept.add(points.get(i));
        anchor = i;
      }
    }
    return kept.size() < 3 ? points : kept;
  }

  private boolean isInner(Vec before, Vec at, Vec after) {
    return at.minus(before).cross(after.minus(at)) * distance < 0;
  }

  private boolean isStraight(List<Vec> points, int anchor, int last, Vec next) {
    Vec along = next.minus(points.get(anchor));
    double reach = tolerance / 4 * along.length();
    for (int k = anchor + 1; k <= last; k++) {
      Vec off = points.get(k).minus(points.get(anchor));
      double forward = off.dot(along);
      if (Math.abs(along.cross(off)) > reach || forward < 0 || forward > along.dot(along)) {
        return false;
      }
    }
    return true;
  }

  private void sides(Vec before, Vec at, Vec after) {
    out.add(at.plus(right(before, at).times(distance)));
    out.add(at.plus(right(at, after).times(distance)));
  }

  private void corner(Vec before, Vec at, Vec after) {
    Vec in = right(before, at);
    Vec on = right(at, after);
    double turn = Math.atan2(in.cross(on), in.dot(on));
    if (turn <= -Math.PI + 1e-12 && distance > 0) {
      turn = Math.PI;
    }
    boolean outer = turn * distance >= 0;
    double half = Math.abs(turn) / 2;
    double shortened = Math.abs(distance) * Math.tan(half);
    boolean mitred =
        outer
            ? Math.abs(distance) * (1 / Math.cos(half) - 1) <= tolerance / 4
            : 2 * shortened < Math.min(before.distanceTo(at), at.distanceTo(after));
    if (mitred && half < Math.PI / 2 - 1e-6) {
      out.add(at.plus(in.plus(on).times(distance / (1 + in.dot(on)))));
    } else if (outer) {
      arc(at, in, turn);
    } else {
      through(before, at, after);
    }
  }

  private void through(Vec before, Vec at, Vec after) {
    out.add(at.plus(right(before, at).times(distance)));
    out.add(at);
    out.add(at.plus(right(at, after).times(distance)));
  }

  private void arc(Vec centre, Vec spoke, double turn) {
    int n = Arcs.segments(Math.abs(distance), Math.abs(turn), tolerance);
    for (int i = 0; i <= n; i++) {
      out.add(centre.plus(Affine.turn(turn * i / n).apply(spoke).times(distance)));
    }
  }

  private static Vec right(Vec from, Vec to) {
    return to.minus(from).unit().left().times(-1);
  }
}
