package slabwright.shape;

/**
 * An affine map: {@code x' = a x + c y + e}, {@code y' = b x + d y + f}. The order of the six
 * numbers is that of the SVG {@code matrix()} function.
 */
public record Affine(double a, double b, double c, double d, double e, double f) {
  public static final Affine IDENTITY = new Affine(1, 0, 0, 1, 0, 0);

  public static Affine move(double dx, double dy) {
    return new Affine(1, 0, 0, 1, dx, dy);
  }

  public static Affine scale(double sx, double sy) {
    return new Affine(sx, 0, 0, sy, 0, 0);
  }

  /** A turn about the origin by {@code radians}, from x towards y. */
  public static Affine turn(double radians) {
    double cos = Math.cos(radians);
    double sin = Math.sin(radians);
    return new Affine(cos, sin, -sin, cos, 0, 0);
  }

  public Vec apply(Vec p) {
    return new Vec(a * p.x() + c * p.y() + e, b * p.x() + d * p.y() + f);
  }

  /** First this map, then {@code next}. */
  public Affine then(Affine next) {
    return new Affine(
        next.a * a + next.c * b,
        next.b * a + next.d * b,
        next.a * c + next.c * d,
        next.b * c + next.d * d,
        next.a * e + next.c * f + next.e,
        next.b * e + next.d * f + next.f);
  }

  /** Negative when the map mirrors. */
  public double determinant() {
    return a * d - b * c;
  }

  /**
   * The map that undoes this one.
   *
   * @throws IllegalArgumentException when the map flattens the plane and has no inverse
   */
  public Affine inverse() {
    double det = determinant();
    if (det == 0) {
      throw new IllegalArgumentException("this map has no inverse");
    }
    return new Affine(
        d / det, -b / det, -c / det, a / det, (c * f - d * e) / det, (b * e - a * f) / det);
  }
}
