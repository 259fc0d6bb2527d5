package slabwright.inlay.settingout;

import slabwright.shape.Line;
import slabwright.shape.PreparedRegion;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/** Whether a tape reaches from one point to another over free floor alone. */
final class SightLine {
  /** A tape may brush a wall this much, mm. */
  private static final double BRUSH = 2;

  /** So many pieces of a tape are looked between. */
  private static final int LOOKS = 8;

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
    return (length > BRUSH && whole.covers(tape))
        || (!crosses(a, b, length) && over(tape) >= length - BRUSH);
  }

  /** Whether it is plain that much of it lies beyond free floor, which clipping would tell too. */
  private boolean crosses(Vec a, Vec b, double length) {
    if (length < 4 * BRUSH) {
      return false;
    }
    for (int i = 1; i < LOOKS; i++) {
      Vec p = a.towards(b, i / (double) LOOKS);
      // As far as that on this side at least, and a step of the grid for what clipping rounds.
      if (!free.contains(p) && free.distanceTo(p) > BRUSH + 0.1) {
        return true;
      }
    }
    return false;
  }

  private double over(Line tape) {
    return free.clip(tape).stream().mapToDouble(Line::length).sum();
  }
}
