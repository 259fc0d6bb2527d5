package slabwright.inlay.settingout;

import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/** Whether a tape reaches from one point to another over free floor alone. */
record SightLine(Region free, double longest) {
  /** A tape may brush a wall this much, mm. */
  private static final double BRUSH = 2;

  boolean reaches(Vec a, Vec b) {
    double length = a.distanceTo(b);
    if (length > longest) {
      return false;
    }
    double over = free.clip(Line.of(a, b)).stream().mapToDouble(Line::length).sum();
    return over >= length - BRUSH;
  }
}
