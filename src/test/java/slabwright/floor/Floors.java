package slabwright.floor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Machine;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.OutlinePiece;
import slabwright.site.Spot;
import slabwright.units.Length;

/** Small invented floors for tests, in millimetres. */
public final class Floors {
  private Floors() {}

  public static FloorArea walled(double... xy) {
    List<OutlinePiece> pieces = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      pieces.add(OutlinePiece.wall(Spot.mm(xy[i], xy[i + 1])));
    }
    return FloorArea.of("a", "hall", pieces);
  }

  public static FloorArea rectangle(double width, double depth) {
    return walled(0, 0, width, 0, width, depth, 0, depth);
  }

  public static FloorArea with(FloorArea area, Mark... marks) {
    return area.withMarks(Arrays.asList(marks));
  }

  public static Mark box(String id, MarkKind kind, double x0, double y0, double x1, double y1) {
    return Mark.of(
        id,
        id,
        kind,
        new Form.Polygon(
            List.of(Spot.mm(x0, y0), Spot.mm(x1, y0), Spot.mm(x1, y1), Spot.mm(x0, y1))));
  }

  public static FloorArea withDoor(FloorArea area, int piece, double offset, double width) {
    List<Doorway> doors = new ArrayList<>(area.doorways());
    doors.add(
        new Doorway("d" + doors.size(), "door", piece, Length.mm(offset), Length.mm(width), true));
    return area.withDoorways(doors);
  }

  public static Machine machine(double body, double grinding, double clearance) {
    return new Machine(
        "m" + Math.round(body),
        "planetary",
        Length.mm(body),
        Length.mm(grinding),
        Length.mm(clearance));
  }
}
