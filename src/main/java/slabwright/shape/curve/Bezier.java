package slabwright.shape.curve;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Vec;

/**
 * Bézier curves as chains of points. A curve of degree d cut into n even steps strays at most
 * {@code d (d-1) / 8 · max|second difference| / n²} from its chain (Wang's bound), so n follows
 * from the tolerance.
 */
public final class Bezier {
  private static final double MOST_STEPS = 100_000;

  private Bezier() {}

  /** Points after {@code a} up to and with {@code c}; the chain stays within the tolerance. */
  public static List<Vec> quadratic(Vec a, Vec b, Vec c, double tolerance) {
    int n = steps(a.minus(b.times(2)).plus(c).length() / 4, tolerance);
    List<Vec> points = new ArrayList<>(n);
    for (int i = 1; i < n; i++) {
      double t = i / (double) n;
      double s = 1 - t;
      points.add(a.times(s * s).plus(b.times(2 * s * t)).plus(c.times(t * t)));
    }
    points.add(c);
    return points;
  }

  /** Points after {@code a} up to and with {@code d}; the chain stays within the tolerance. */
  public static List<Vec> cubic(Vec a, Vec b, Vec c, Vec d, double tolerance) {
    double second =
        Math.max(a.minus(b.times(2)).plus(c).length(), b.minus(c.times(2)).plus(d).length());
    int n = steps(second * 0.75, tolerance);
    List<Vec> points = new ArrayList<>(n);
    for (int i = 1; i < n; i++) {
      double t = i / (double) n;
      double s = 1 - t;
      points.add(
          a.times(s * s * s)
              .plus(b.times(3 * s * s * t))
              .plus(c.times(3 * s * t * t))
              .plus(d.times(t * t * t)));
    }
    points.add(d);
    return points;
  }

  private static int steps(double strayOfOneStep, double tolerance) {
    return (int)
        Math.max(1, Math.min(MOST_STEPS, Math.ceil(Math.sqrt(strayOfOneStep / tolerance))));
  }
}
