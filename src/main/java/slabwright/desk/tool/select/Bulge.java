package slabwright.desk.tool.select;

import slabwright.desk.tool.Touch;
import slabwright.shape.Vec;
import slabwright.units.Length;

/**
 * A side that may be an arc.
 *
 * @param rise of the arc over its chord, mm, positive to the right of travel
 */
record Bulge(Vec from, Vec to, double rise) {
  /** Steps that sizes dragged freely are rounded to, mm: a quarter inch. */
  private static final double STEP = 6.35;

  private Vec right() {
    return to.minus(from).unit().left().times(-1);
  }

  /** The middle of the arc. */
  Vec top() {
    return from.towards(to, 0.5).plus(right().times(rise));
  }

  /**
   * The rise when what was held at a place is dragged to the touch; nearly straight is straight.
   */
  Length to(Vec held, Touch t) {
    double next = rise + t.raw().minus(held).dot(right());
    return Math.abs(next) < t.reach() / 2 ? Length.ZERO : Length.mm(round(next));
  }

  static double round(double mm) {
    return Math.rint(mm / STEP) * STEP;
  }
}
