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
    return of(ring, distance, tolerance, OffsetBays.isRugged(ring, distance));
  }

  /** The same over the bays of the ring, or along each side however rugged it is. */
  static Ring of(Ring ring, double distance, double tolerance, boolean overBays) {
    OffsetCurve curve = new OffsetCurve(distance, tolerance);
    List<Vec> points = curve.smoothed(distinct(ring.points()));
    return overBays ? curve.over(points) : curve.along(points);
  }

  private Ring over(List<Vec> points) {
    List<OffsetBays.Gap> gaps = OffsetBays.of(points, distance);
    OffsetBays.Gap before = gaps.get(gaps.size() - 1);
    for (OffsetBays.Gap gap : gaps) {
      if (before.isSide() && gap.isSide()) {
        corner(before.from(), gap.from(), gap.to());
      } else {
        touched(before.arriving(), gap.from(), gap.leaving());
      }
      before = gap;
    }
    return new Ring(out);
  }

  private Ring along(List<Vec> points) {
    int n = points.size();
    for (int i = 0; i < n && n > 1; i++) {
      corner(points.get((i + n - 1) % n), points.get(i), points.get((i + 1) % n));
    }
    return new Ring(out);
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
   * inner arc narrower than the distance would else become a sheaf of crossing spokes. No chord of
   * such an arc that strays no farther is longer than √(2 · distance · tolerance), so nothing
   * longer is drawn anew: a side of a hall must not turn about its far end for a corner at this
   * one.
   */
  private List<Vec> smoothed(List<Vec> points) {
    int n = points.size();
    double longest = Math.sqrt(2 * Math.abs(distance) * tolerance);
    boolean[] dropped = new boolean[n];
    int first = firstKept(points, longest);
    int anchor = first;
    for (int k = 1; k < n; k++) {
      int i = first + k;
      Vec next = at(points, i + 1);
      dropped[i % n] =
          i - anchor <= LONGEST_RUN
              && isInner(at(points, i - 1), at(points, i), next)
              && at(points, anchor).distanceTo(next) <= longest
              && isStraight(points, anchor, i, next);
      anchor = dropped[i % n] ? anchor : i;
    }
    List<Vec> kept = new ArrayList<>(n);
    for (int i = 0; i < n; i++) {
      if (!dropped[i]) {
        kept.add(points.get(i));
      }
    }
    return kept.size() < 3 ? points : kept;
  }

  /** A corner that is kept whichever the ring begins with, so that its arcs are thinned alike. */
  private int firstKept(List<Vec> points, double longest) {
    for (int i = 0; i < points.size(); i++) {
      Vec before = at(points, i + points.size() - 1);
      Vec after = at(points, i + 1);
      if (!isInner(before, points.get(i), after) || before.distanceTo(points.get(i)) > longest) {
        return i;
      }
    }
    return 0;
  }

  private static Vec at(List<Vec> points, int i) {
    return points.get(i % points.size());
  }

  private boolean isInner(Vec before, Vec at, Vec after) {
    return at.minus(before).cross(after.minus(at)) * distance < 0;
  }

  private boolean isStraight(List<Vec> points, int anchor, int last, Vec next) {
    Vec from = at(points, anchor);
    Vec along = next.minus(from);
    double reach = tolerance / 4 * along.length();
    for (int k = anchor + 1; k <= last; k++) {
      Vec off = at(points, k).minus(from);
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

  /** A corner at which a bay begins or ends, that the disc touches there. */
  private void touched(Vec in, Vec at, Vec on) {
    double turn = Math.atan2(in.cross(on), in.dot(on));
    if (turn * distance >= 0) {
      arc(at, in, turn);
    } else {
      out.add(at.plus(in.times(distance)));
      out.add(at);
      out.add(at.plus(on.times(distance)));
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
