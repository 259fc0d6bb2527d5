package slabwright.floor;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** Convex hulls of a few points (Andrew's monotone chain). */
final class Hull {
  private Hull() {}

  /** The Minkowski sum of a line with a rectangle round the origin, given by its half sides. */
  static Ring of(List<Vec> line, Vec fore, Vec side) {
    List<Vec> points = new ArrayList<>();
    for (Vec p : line) {
      points.add(p.plus(fore).plus(side));
      points.add(p.plus(fore).minus(side));
      points.add(p.minus(fore).plus(side));
      points.add(p.minus(fore).minus(side));
    }
    return of(points);
  }

  /** The hull of points that don't all lie on one another. */
  static Ring of(List<Vec> all) {
    List<Vec> points = new ArrayList<>(all);
    points.sort(Comparator.comparingDouble(Vec::x).thenComparingDouble(Vec::y));
    List<Vec> hull = new ArrayList<>();
    chain(points, hull);
    Collections.reverse(points);
    chain(points, hull);
    return new Ring(hull);
  }

  private static void chain(List<Vec> points, List<Vec> hull) {
    int start = hull.size();
    for (Vec p : points) {
      while (hull.size() >= start + 2 && turn(hull, p) <= 0) {
        hull.remove(hull.size() - 1);
      }
      hull.add(p);
    }
    hull.remove(hull.size() - 1);
  }

  private static double turn(List<Vec> hull, Vec p) {
    Vec last = hull.get(hull.size() - 1);
    return last.minus(hull.get(hull.size() - 2)).cross(p.minus(last));
  }
}
