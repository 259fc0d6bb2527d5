package slabwright.shape.fit;

import java.util.List;
import java.util.Optional;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * A map between two planes as a camera makes it: straight lines stay straight, parallels may meet.
 * {@code x' = (a x + b y + c) / (g x + h y + i)}, {@code y' = (d x + e y + f) / (g x + h y + i)}.
 *
 * <p>It holds for points of one plane only: what stands above a floor is mapped to where its line
 * of sight meets the floor. Source: P. Heckbert, <i>Fundamentals of Texture Mapping and Image
 * Warping</i>, 1989, square to quadrilateral (from memory; tested against values derived by hand).
 */
public record Homography(
    double a, double b, double c, double d, double e, double f, double g, double h, double i) {
  /** Corners nearer to a straight line than this share of the quadrilateral's area are refused. */
  private static final double FLAT = 1e-6;

  /**
   * The map that takes four corners to four others, in order.
   *
   * @return empty when either set is not the corners of a convex quadrilateral in walking order
   */
  public static Optional<Homography> of(List<Vec> from, List<Vec> to) {
    if (!convex(from) || !convex(to)) {
      return Optional.empty();
    }
    return Optional.of(squareTo(from).inverse().then(squareTo(to)));
  }

  private static boolean convex(List<Vec> corners) {
    if (corners.size() != 4) {
      return false;
    }
    double whole = new Ring(corners).signedArea();
    for (int k = 0; k < 4; k++) {
      Vec here = corners.get(k);
      Vec in = here.minus(corners.get((k + 3) % 4));
      Vec out = corners.get((k + 1) % 4).minus(here);
      if (!(in.cross(out) * Math.signum(whole) > FLAT * Math.abs(whole))) {
        return false;
      }
    }
    return true;
  }

  /** The unit square's corners (0,0), (1,0), (1,1), (0,1) to these. */
  private static Homography squareTo(List<Vec> q) {
    Vec p0 = q.get(0);
    Vec p1 = q.get(1);
    Vec p2 = q.get(2);
    Vec p3 = q.get(3);
    Vec u = p1.minus(p2);
    Vec v = p3.minus(p2);
    Vec s = p0.minus(p1).plus(p2).minus(p3);
    double g = s.cross(v) / u.cross(v);
    double h = u.cross(s) / u.cross(v);
    Vec x = p1.minus(p0).plus(p1.times(g));
    Vec y = p3.minus(p0).plus(p3.times(h));
    return new Homography(x.x(), y.x(), p0.x(), x.y(), y.y(), p0.y(), g, h, 1);
  }

  /** The image of a point; not finite for a point on {@link #depth} zero, the horizon. */
  public Vec apply(Vec p) {
    double w = depth(p);
    return new Vec((a * p.x() + b * p.y() + c) / w, (d * p.x() + e * p.y() + f) / w);
  }

  /** The denominator: 0 on the horizon, of one sign on either side of it. */
  public double depth(Vec p) {
    return g * p.x() + h * p.y() + i;
  }

  /** How many times larger areas become about a point; negative where the map mirrors. */
  public double areaScale(Vec p) {
    double w = depth(p);
    return determinant() / (w * w * w);
  }

  /**
   * How long the image of a short unit length about a point is, in the direction it shrinks most.
   */
  public double leastScale(Vec p) {
    Vec q = apply(p);
    double w = depth(p);
    Vec alongX = new Vec(a - g * q.x(), d - g * q.y()).times(1 / w);
    Vec alongY = new Vec(b - h * q.x(), e - h * q.y()).times(1 / w);
    double squares = alongX.dot(alongX) + alongY.dot(alongY);
    double area = alongX.cross(alongY);
    double most =
        Math.sqrt((squares + Math.sqrt(Math.max(0, squares * squares - 4 * area * area))) / 2);
    return Math.abs(area) / most;
  }

  private double determinant() {
    return a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
  }

  /** First this map, then {@code next}. */
  public Homography then(Homography next) {
    return new Homography(
        next.a * a + next.b * d + next.c * g,
        next.a * b + next.b * e + next.c * h,
        next.a * c + next.b * f + next.c * i,
        next.d * a + next.e * d + next.f * g,
        next.d * b + next.e * e + next.f * h,
        next.d * c + next.e * f + next.f * i,
        next.g * a + next.h * d + next.i * g,
        next.g * b + next.h * e + next.i * h,
        next.g * c + next.h * f + next.i * i);
  }

  /** The map that undoes this one. */
  public Homography inverse() {
    double det = determinant();
    return new Homography(
        (e * i - f * h) / det,
        (c * h - b * i) / det,
        (b * f - c * e) / det,
        (f * g - d * i) / det,
        (a * i - c * g) / det,
        (c * d - a * f) / det,
        (d * h - e * g) / det,
        (b * g - a * h) / det,
        (a * e - b * d) / det);
  }
}
