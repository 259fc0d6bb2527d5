package slabwright.shape;

import java.util.Collection;

/** An upright rectangle in millimetres. Empty when {@code minX > maxX}. */
public record Bounds(double minX, double minY, double maxX, double maxY) {
  public static final Bounds EMPTY =
      new Bounds(
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.NEGATIVE_INFINITY,
          Double.NEGATIVE_INFINITY);

  public static Bounds of(Collection<Vec> points) {
    Bounds b = EMPTY;
    for (Vec p : points) {
      b = b.including(p);
    }
    return b;
  }

  public boolean isEmpty() {
    return minX > maxX || minY > maxY;
  }

  public double width() {
    return isEmpty() ? 0 : maxX - minX;
  }

  public double height() {
    return isEmpty() ? 0 : maxY - minY;
  }

  public Vec middle() {
    return new Vec((minX + maxX) / 2, (minY + maxY) / 2);
  }

  public Bounds including(Vec p) {
    return new Bounds(
        Math.min(minX, p.x()), Math.min(minY, p.y()), Math.max(maxX, p.x()), Math.max(maxY, p.y()));
  }

  public Bounds including(Bounds o) {
    return new Bounds(
        Math.min(minX, o.minX),
        Math.min(minY, o.minY),
        Math.max(maxX, o.maxX),
        Math.max(maxY, o.maxY));
  }

  /** Grown on every side by {@code by} millimetres (shrunk when negative). */
  public Bounds grown(double by) {
    return new Bounds(minX - by, minY - by, maxX + by, maxY + by);
  }

  public boolean contains(Vec p) {
    return p.x() >= minX && p.x() <= maxX && p.y() >= minY && p.y() <= maxY;
  }

  /** How far a point lies outside of it, mm; 0 inside. */
  public double distanceTo(Vec p) {
    double dx = Math.max(0, Math.max(minX - p.x(), p.x() - maxX));
    double dy = Math.max(0, Math.max(minY - p.y(), p.y() - maxY));
    return Math.hypot(dx, dy);
  }

  public boolean meets(Bounds o) {
    return minX <= o.maxX && o.minX <= maxX && minY <= o.maxY && o.minY <= maxY;
  }
}
