package slabwright.inlay.proof;

import slabwright.shape.Affine;
import slabwright.shape.Vec;

/**
 * A similarity from the plan to the drawing: mirrored at the x axis first if at all, then scaled
 * and turned ({@code re}, {@code im} as one complex number), then moved.
 */
record Pose(boolean mirrored, double re, double im, double dx, double dy) {
  /** The pose that takes {@code from} to {@code to} with this scale and turn (radians, x to y). */
  static Pose taking(Vec from, Vec to, double scale, double turn, boolean mirrored) {
    Pose p = new Pose(mirrored, scale * Math.cos(turn), scale * Math.sin(turn), 0, 0);
    Vec at = p.apply(from);
    return new Pose(mirrored, p.re, p.im, to.x() - at.x(), to.y() - at.y());
  }

  Vec apply(Vec p) {
    double y = mirrored ? -p.y() : p.y();
    return new Vec(re * p.x() - im * y + dx, im * p.x() + re * y + dy);
  }

  Affine affine() {
    return mirrored ? new Affine(re, im, im, -re, dx, dy) : new Affine(re, im, -im, re, dx, dy);
  }

  double scale() {
    return Math.hypot(re, im);
  }

  /**
   * Degrees clockwise as drawn (y down), 0 to 360; of a mirrored one, after left and right swap.
   */
  double degrees() {
    double d = Math.toDegrees(Math.atan2(im, re)) + (mirrored ? 180 : 0);
    return d < 0 ? d + 360 : d % 360;
  }
}
