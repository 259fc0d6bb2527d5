package slabwright.sheets.plan;

import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.units.Message;

/** Names a side by where it lies as the plan is read. */
public final class SideName {

  private SideName() {}

  /** The side that a straight run faces outwards: top, right, bottom or left of the sheet. */
  public static Message of(Line line, boolean floorOnLeft) {
    Vec first = line.points().get(0);
    Vec last = line.points().get(line.points().size() - 1);
    Vec out = last.minus(first).left().times(floorOnLeft ? -1 : 1);
    long quarter = Math.round(out.angle() / (Math.PI / 2));
    return switch ((int) Math.floorMod(quarter, 4L)) {
      case 0 -> Message.of("sheets.side-name.right");
      case 1 -> Message.of("sheets.side-name.top");
      case 2 -> Message.of("sheets.side-name.left");
      default -> Message.of("sheets.side-name.bottom");
    };
  }
}
