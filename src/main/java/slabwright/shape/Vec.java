package slabwright.shape;

/** A point or a displacement in the plane, in millimetres. */
public record Vec(double x, double y) {
  public static final Vec ZERO = new Vec(0, 0);

  public Vec plus(Vec o) {
    return new Vec(x + o.x, y + o.y);
  }

  public Vec minus(Vec o) {
    return new Vec(x - o.x, y - o.y);
  }

  public Vec times(double k) {
    return new Vec(x * k, y * k);
  }

  public double dot(Vec o) {
    return x * o.x + y * o.y;
  }

  /**
   * The z component of the cross product: positive when {@code o} lies counter-clockwise of this (y
   * up).
   */
  public double cross(Vec o) {
    return x * o.y - y * o.x;
  }

  public double length() {
    return Math.hypot(x, y);
  }

  public double distanceTo(Vec o) {
    return Math.hypot(x - o.x, y - o.y);
  }

  /** This direction with length 1; the zero vector stays zero. */
  public Vec unit() {
    double n = length();
    return n == 0 ? ZERO : new Vec(x / n, y / n);
  }

  /** Turned a quarter counter-clockwise (y up). */
  public Vec left() {
    return new Vec(-y, x);
  }

  /** The angle from the x axis in radians, counter-clockwise, in (-pi, pi]. */
  public double angle() {
    return Math.atan2(y, x);
  }

  /** The point at fraction {@code t} of the way to {@code o}. */
  public Vec towards(Vec o, double t) {
    return new Vec(x + (o.x - x) * t, y + (o.y - y) * t);
  }
}
