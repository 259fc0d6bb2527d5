package slabwright.sheets.packet.client;

import java.util.List;
import slabwright.figures.AreaInks;
import slabwright.inlay.settingout.SettingOutOrigin;
import slabwright.shape.Vec;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.plan.LabelCandidates;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.OutlineShape;
import slabwright.units.Message;

/**
 * Where a point lies for someone who stands in a doorway and looks in.
 *
 * @param ahead straight in from the doorway's middle, mm
 * @param right to the right of its middle, mm; to the left below 0
 */
record DoorOffset(Doorway door, Vec middle, double ahead, double right) {
  static DoorOffset of(FloorArea area, Doorway door, Vec point) {
    OutlineShape shape = OutlineShape.of(area.outline(), AreaInks.TOLERANCE);
    List<Vec> ends = LabelCandidates.chord(shape.doorway(door)).points();
    Vec along = ends.get(1).minus(ends.get(0)).unit();
    Vec in = shape.floorOnLeft() ? along.left() : along.left().times(-1);
    Vec middle = ends.get(0).towards(ends.get(1), 0.5);
    Vec off = point.minus(middle);
    return new DoorOffset(door, middle, off.dot(in), off.dot(in.left().times(-1)));
  }

  /** Where it lies and how it reads, in one sentence each. */
  String sentence(Message reading, SheetContext context) {
    String in = context.length(Math.abs(ahead));
    String beside = context.length(Math.abs(right));
    if (Math.abs(right) < SettingOutOrigin.ON_LINE) {
      return context.say("sheets.door-offset.in-line", door.name(), in, reading);
    }
    return right > 0
        ? context.say("sheets.door-offset.right", door.name(), in, beside, reading)
        : context.say("sheets.door-offset.left", door.name(), in, beside, reading);
  }
}
