package slabwright.shape.curve;

import java.util.List;
import slabwright.shape.Vec;

/**
 * One cubic curve laid through points by least squares, its ends and end tangents given.
 *
 * @param start where it starts
 * @param worst how far the farthest point lies from it, mm
 * @param at that point's place in the list
 */
record CubicFit(Vec start, CurvedRing.Curve curve, double worst, int at) {
  private static final double FLAT = 1e-12;

  /**
   * Fits.
   *
   * @param u a parameter of each point, rising from 0 to 1
   * @param left unit tangent out of the first point
   * @param right unit tangent out of the last point, backwards
   */
  static CubicFit of(List<Vec> p, double[] u, Vec left, Vec right) {
    Vec a = p.get(0);
    Vec d = p.get(p.size() - 1);
    double c00 = 0;
    double c01 = 0;
    double c11 = 0;
    double x0 = 0;
    double x1 = 0;
    for (int i = 0; i < u.length; i++) {
      double t = u[i];
      double s = 1 - t;
      Vec l = left.times(3 * s * s * t);
      Vec r = right.times(3 * s * t * t);
      Vec rest =
          p.get(i)
              .minus(a.times(s * s * s + 3 * s * s * t))
              .minus(d.times(t * t * t + 3 * s * t * t));
      c00 += l.dot(l);
      c01 += l.dot(r);
      c11 += r.dot(r);
      x0 += l.dot(rest);
      x1 += r.dot(rest);
    }
    double det = c00 * c11 - c01 * c01;
    double third = a.distanceTo(d) / 3;
    double one = det > FLAT * c00 * c11 ? (x0 * c11 - x1 * c01) / det : third;
    double two = det > FLAT * c00 * c11 ? (c00 * x1 - c01 * x0) / det : third;
    boolean sound = one > 1e-3 * third && two > 1e-3 * third;
    CurvedRing.Curve curve =
        new CurvedRing.Curve(
            a.plus(left.times(sound ? one : third)), d.plus(right.times(sound ? two : third)), d);
    return measured(p, u, a, curve);
  }

  private static CubicFit measured(List<Vec> p, double[] u, Vec a, CurvedRing.Curve curve) {
    double worst = 0;
    int at = p.size() / 2;
    for (int i = 1; i + 1 < u.length; i++) {
      double off = point(a, curve, u[i]).distanceTo(p.get(i));
      if (off > worst) {
        worst = off;
        at = i;
      }
    }
    return new CubicFit(a, curve, worst, at);
  }

  /** Parameters nearer to the points, by one step of Newton each. */
  double[] nearer(List<Vec> p, double[] u) {
    double[] next = u.clone();
    for (int i = 1; i + 1 < u.length; i++) {
      double t = u[i];
      double s = 1 - t;
      Vec off = point(start, curve, t).minus(p.get(i));
      Vec ab = curve.first().minus(start);
      Vec bc = curve.second().minus(curve.first());
      Vec cd = curve.end().minus(curve.second());
      Vec d1 = ab.times(3 * s * s).plus(bc.times(6 * s * t)).plus(cd.times(3 * t * t));
      Vec d2 = bc.minus(ab).times(6 * s).plus(cd.minus(bc).times(6 * t));
      double slope = d1.dot(d1) + off.dot(d2);
      if (slope > 0) {
        next[i] = Math.max(0, Math.min(1, t - off.dot(d1) / slope));
      }
    }
    return next;
  }

  static Vec point(Vec a, CurvedRing.Curve c, double t) {
    double s = 1 - t;
    return a.times(s * s * s)
        .plus(c.first().times(3 * s * s * t))
        .plus(c.second().times(3 * s * t * t))
        .plus(c.end().times(t * t * t));
  }
}
