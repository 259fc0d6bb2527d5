package slabwright.sheets.plan;

import slabwright.shape.Line;
import slabwright.shape.Vec;

/** Names a side by where it lies as the plan is read. */
public final class SideName {
  private static final String[] SIDES = {"right", "top", "left", "bottom"};

  private SideName() {}

  /** The side that a straight run faces outwards: top, right, bottom or left of the sheet. */
  public static String of(Line line, boolean floorOnLeft) {
    Vec first = line.points().get(0);
    Vec last = line.points().get(line.points().size() - 1);
    Vec out = last.minus(first).left().times(floorOnLeft ? -1 : 1);
    long quarter = Math.round(out.angle() / (Math.PI / 2));
    return SIDES[(int) Math.floorMod(quarter, 4L)];
  }
}
