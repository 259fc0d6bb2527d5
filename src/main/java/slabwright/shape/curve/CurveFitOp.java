package slabwright.shape.curve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Line;
import slabwright.shape.Ring;
import slabwright.shape.SegmentGeometry;
import slabwright.shape.Vec;

/**
 * Fits curves to a flattened outline: it is parted at its corners, and each run between two corners
 * is fitted by cubic curves by least squares, parted where it strays most until it fits (Schneider
 * 1990). A run on which curves don't pay, or stray between its points, stays as it is.
 */
final class CurveFitOp {
  private static final double CORNER = Math.toRadians(20);
  private static final double SHARE_OF_TOLERANCE = 0.9;
  private static final double CLOSE_MM = 1;
  private static final int MOST_ADDED = 400;
  private static final int STEPS = 6;
  private static final double WORSE_THAN_HOPEFUL = 30;
  private static final int CHECKS = 8;

  private final Ring ring;
  private final double tolerance;
  private final List<CurvedRing.Piece> pieces = new ArrayList<>();

  CurveFitOp(Ring ring, double tolerance) {
    this.ring = ring;
    this.tolerance = tolerance;
  }

  CurvedRing run() {
    List<Vec> p = ring.points();
    List<Integer> corners = corners(p);
    if (corners.isEmpty()) {
      corners = List.of(0, p.size() / 2);
    }
    for (int k = 0; k < corners.size(); k++) {
      int from = corners.get(k);
      int to = corners.get((k + 1) % corners.size());
      run(points(p, from, to));
    }
    return new CurvedRing(p.get(corners.get(0)), pieces);
  }

  private static List<Integer> corners(List<Vec> p) {
    List<Integer> corners = new ArrayList<>();
    int n = p.size();
    for (int i = 0; i < n; i++) {
      Vec in = p.get(i).minus(p.get((i + n - 1) % n)).unit();
      Vec out = p.get((i + 1) % n).minus(p.get(i)).unit();
      if (Math.abs(Math.atan2(in.cross(out), in.dot(out))) > CORNER) {
        corners.add(i);
      }
    }
    return corners;
  }

  private static List<Vec> points(List<Vec> p, int from, int to) {
    List<Vec> run = new ArrayList<>();
    run.add(p.get(from));
    int i = from;
    do {
      i = (i + 1) % p.size();
      run.add(p.get(i));
    } while (i != to);
    return run;
  }

  private void run(List<Vec> chain) {
    if (chain.size() > 3) {
      List<Vec> dense = dense(chain);
      List<CurvedRing.Curve> curves = new ArrayList<>();
      fit(
          dense,
          tangent(dense.get(0), dense.get(1), dense.get(2)),
          tangent(last(dense, 0), last(dense, 1), last(dense, 2)),
          curves);
      if (curves.size() * 2 < chain.size() && isClose(chain, curves)) {
        pieces.addAll(curves);
        return;
      }
    }
    chain.stream().skip(1).forEach(v -> pieces.add(new CurvedRing.Straight(v)));
  }

  private static Vec last(List<Vec> points, int back) {
    return points.get(points.size() - 1 - back);
  }

  /** Long sides get points between, so that a curve can't bulge from them unseen. */
  private static List<Vec> dense(List<Vec> chain) {
    List<Vec> dense = new ArrayList<>();
    double length = new Line(chain).length();
    double step = Math.max(CLOSE_MM, length / MOST_ADDED);
    dense.add(chain.get(0));
    for (int i = 1; i < chain.size(); i++) {
      Vec a = chain.get(i - 1);
      Vec b = chain.get(i);
      int parts = (int) Math.max(1, Math.ceil(a.distanceTo(b) / step));
      for (int k = 1; k < parts; k++) {
        dense.add(a.towards(b, (double) k / parts));
      }
      dense.add(b);
    }
    return dense;
  }

  /** Of the parabola through three points that follow each other, at the first. */
  private static Vec tangent(Vec a, Vec b, Vec c) {
    double u = a.distanceTo(b);
    double v = b.distanceTo(c);
    if (u == 0 || v == 0) {
      return c.minus(a).unit();
    }
    Vec first = b.minus(a).times(1 / u);
    Vec second = c.minus(b).times(1 / v);
    return first.minus(second.minus(first).times(u / (u + v))).unit();
  }

  private void fit(List<Vec> p, Vec start, Vec end, List<CurvedRing.Curve> out) {
    if (p.size() == 2) {
      double third = p.get(0).distanceTo(p.get(1)) / 3;
      out.add(
          new CurvedRing.Curve(
              p.get(0).plus(start.times(third)), p.get(1).plus(end.times(third)), p.get(1)));
      return;
    }
    double limit = tolerance * SHARE_OF_TOLERANCE;
    double[] u = byLength(p);
    CubicFit best = CubicFit.of(p, u, start, end);
    for (int i = 0; i < STEPS && best.worst() > limit; i++) {
      if (best.worst() > WORSE_THAN_HOPEFUL * limit) {
        break;
      }
      u = best.nearer(p, u);
      best = CubicFit.of(p, u, start, end);
    }
    if (best.worst() <= limit) {
      out.add(best.curve());
      return;
    }
    int at = Math.min(p.size() - 2, Math.max(1, best.at()));
    Vec middle = p.get(at + 1).minus(p.get(at - 1)).unit();
    fit(p.subList(0, at + 1), start, middle.times(-1), out);
    fit(p.subList(at, p.size()), middle, end, out);
  }

  private static double[] byLength(List<Vec> p) {
    double[] u = new double[p.size()];
    for (int i = 1; i < u.length; i++) {
      u[i] = u[i - 1] + p.get(i).distanceTo(p.get(i - 1));
    }
    double all = u[u.length - 1];
    for (int i = 1; i < u.length; i++) {
      u[i] = all == 0 ? i / (u.length - 1.0) : u[i] / all;
    }
    return u;
  }

  /** Whether the curves stay within the tolerance of the chain everywhere. */
  private boolean isClose(List<Vec> chain, List<CurvedRing.Curve> curves) {
    Vec here = chain.get(0);
    int side = 0;
    for (CurvedRing.Curve c : curves) {
      for (int k = 1; k <= CHECKS; k++) {
        Vec at = CubicFit.point(here, c, (double) k / CHECKS);
        Optional<Integer> near = nearSide(chain, side, at);
        if (near.isEmpty()) {
          return false;
        }
        side = near.get();
      }
      here = c.end();
    }
    return true;
  }

  /** The next side from {@code side} on that lies within the tolerance of the point. */
  private Optional<Integer> nearSide(List<Vec> chain, int side, Vec at) {
    for (int i = side; i + 1 < chain.size(); i++) {
      if (SegmentGeometry.nearest(chain.get(i), chain.get(i + 1), at).distanceTo(at) <= tolerance) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }
}
