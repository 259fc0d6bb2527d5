package slabwright.inlay.settingout;

import slabwright.shape.Line;
import slabwright.shape.PreparedRegion;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/** Whether a tape reaches from one point to another over free floor alone. */
final class SightLine {
  /** A tape may brush a wall this much, mm. */
  private static final double BRUSH = 2;

  private final Region free;
  private final PreparedRegion whole;
  private final double longest;

  SightLine(Region free, double longest) {
    this.free = free;
    this.longest = longest;
    whole = new PreparedRegion(free);
  }

  boolean reaches(Vec a, Vec b) {
    double length = a.distanceTo(b);
    if (length > longest) {
      return false;
    }
    Line tape = Line.of(a, b);
    // Most tapes lie on free floor alone, which is quickly told.
    return (length > BRUSH && whole.covers(tape)) || over(tape) >= length - BRUSH;
  }

  private double over(Line tape) {
    return free.clip(tape).stream().mapToDouble(Line::length).sum();
  }
}
