package slabwright.inlay.artwork;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import slabwright.inlay.artwork.ArtworkRefusal.Reason;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * Curves to chains of points. A Bézier of degree d with n even steps strays at most {@code d (d-1)
 * / 8 · max|second difference| / n²} from its chain (Wang's bound), so n follows from the
 * tolerance. Open subpaths are closed, as filling does.
 */
final class Flatten {
  private static final int MOST_POINTS = 4_000_000;
  private static final double FARTHEST = 1e9;

  private final double tolerance;
  private final List<Ring> rings = new ArrayList<>();
  private List<Vec> points = new ArrayList<>();
  private int count;

  private Flatten(double tolerance) {
    this.tolerance = tolerance;
  }

  /** The path's rings after {@code at}; the tolerance is in the frame that {@code at} leads to. */
  static List<Ring> rings(Path2D path, AffineTransform at, double tolerance) {
    Flatten f = new Flatten(tolerance);
    double[] c = new double[6];
    for (PathIterator it = path.getPathIterator(at); !it.isDone(); it.next()) {
      switch (it.currentSegment(c)) {
        case PathIterator.SEG_MOVETO -> {
          f.finish();
          f.add(new Vec(c[0], c[1]));
        }
        case PathIterator.SEG_LINETO -> f.add(new Vec(c[0], c[1]));
        case PathIterator.SEG_QUADTO -> f.quadratic(new Vec(c[0], c[1]), new Vec(c[2], c[3]));
        case PathIterator.SEG_CUBICTO ->
            f.cubic(new Vec(c[0], c[1]), new Vec(c[2], c[3]), new Vec(c[4], c[5]));
        default -> f.close();
      }
    }
    f.finish();
    return f.rings;
  }

  private void close() {
    Vec start = points.isEmpty() ? Vec.ZERO : points.get(0);
    finish();
    // what follows a closed subpath without a move starts at its first point
    points.add(start);
  }

  private void finish() {
    if (points.size() >= 3) {
      rings.add(new Ring(points));
    }
    points = new ArrayList<>();
  }

  private void add(Vec p) {
    if (!(Math.abs(p.x()) < FARTHEST) || !(Math.abs(p.y()) < FARTHEST)) {
      throw new Refused(
          Reason.ABSURD_SIZE,
          "a part lies absurdly far out; delete or move it in the drawing program.");
    }
    if (++count > MOST_POINTS) {
      throw new Refused(
          Reason.TOO_LARGE, "its outlines have too many points; simplify them and save again.");
    }
    points.add(p);
  }

  private Vec last() {
    return points.isEmpty() ? Vec.ZERO : points.get(points.size() - 1);
  }

  private void quadratic(Vec b, Vec c) {
    Vec a = last();
    double second = a.minus(b.times(2)).plus(c).length();
    int n = steps(second / 4);
    for (int i = 1; i < n; i++) {
      double t = i / (double) n;
      double s = 1 - t;
      add(a.times(s * s).plus(b.times(2 * s * t)).plus(c.times(t * t)));
    }
    add(c);
  }

  private void cubic(Vec b, Vec c, Vec d) {
    Vec a = last();
    double second =
        Math.max(a.minus(b.times(2)).plus(c).length(), b.minus(c.times(2)).plus(d).length());
    int n = steps(second * 0.75);
    for (int i = 1; i < n; i++) {
      double t = i / (double) n;
      double s = 1 - t;
      add(
          a.times(s * s * s)
              .plus(b.times(3 * s * s * t))
              .plus(c.times(3 * s * t * t))
              .plus(d.times(t * t * t)));
    }
    add(d);
  }

  private int steps(double strayOfOneStep) {
    double n = Math.ceil(Math.sqrt(strayOfOneStep / tolerance));
    return (int) Math.max(1, Math.min(n, 100_000));
  }
}
