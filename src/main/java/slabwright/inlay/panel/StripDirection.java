package slabwright.inlay.panel;

import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.HandSeams;

/** Which way the strips run on the blank as read. */
public enum StripDirection {
  /** Strips run from top to bottom; they stand side by side from left to right. */
  DOWN,
  /** Strips run from left to right; they follow each other from top to bottom. */
  ACROSS;

  /** The turn of strips that a person chose. */
  public static StripDirection of(HandSeams.Strips strips) {
    return strips == HandSeams.Strips.DOWN ? DOWN : ACROSS;
  }

  /** The same as the plan keeps it. */
  public HandSeams.Strips strips() {
    return this == DOWN ? HandSeams.Strips.DOWN : HandSeams.Strips.ACROSS;
  }

  /** Across the strips. */
  double u(Vec p) {
    return this == DOWN ? p.x() : p.y();
  }

  /** Along the strips. */
  double v(Vec p) {
    return this == DOWN ? p.y() : p.x();
  }

  /** Width across the strips, mm. */
  public double across(Bounds b) {
    return this == DOWN ? b.width() : b.height();
  }

  /** Length along the strips, mm. */
  public double along(Bounds b) {
    return this == DOWN ? b.height() : b.width();
  }

  Vec point(double u, double v) {
    return this == DOWN ? new Vec(u, v) : new Vec(v, u);
  }

  Bounds box(double u0, double v0, double u1, double v1) {
    Vec low = point(u0, v0);
    Vec high = point(u1, v1);
    return new Bounds(low.x(), low.y(), high.x(), high.y());
  }
}
