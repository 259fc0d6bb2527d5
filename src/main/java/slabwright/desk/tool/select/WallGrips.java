package slabwright.desk.tool.select;

import java.util.List;
import java.util.Optional;
import slabwright.desk.model.edit.Walls;
import slabwright.desk.model.scene.FloorPicture;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.OutlinePiece;
import slabwright.site.edit.Edit;
import slabwright.site.edit.OutlineEdit;
import slabwright.units.Length;

/** Grips of a wall, to bulge it, and of a doorway, to move one jamb. */
final class WallGrips {
  /** How far the knob stands off its wall, mm of screen paper. */
  private static final double OFF = 6;

  private static final double NARROWEST = 50;

  private WallGrips() {}

  /** A dot on the floor side of the wall; the wall itself slides when it is dragged. */
  static List<Grip> wall(FloorPicture p, int wall, double mm) {
    FloorArea area = p.area();
    if (wall >= area.outline().size()) {
      return List.of();
    }
    OutlinePiece piece = area.outline().get(wall);
    Bulge side = new Bulge(Walls.start(area, wall), Walls.end(area, wall), piece.rise().mm());
    Vec left = side.to().minus(side.from()).unit().left();
    Vec knob = side.top().plus(left.times((p.shape().floorOnLeft() ? OFF : -OFF) * mm));
    return List.of(
        Grip.dot(
            knob,
            t -> {
              Length rise = side.to(knob, t);
              return Optional.of(new OutlineEdit.SetPiece(area.id(), wall, piece.kind(), rise));
            }));
  }

  static List<Grip> doorway(FloorPicture p, String id) {
    Optional<Doorway> found =
        p.area().doorways().stream().filter(d -> d.id().equals(id)).findFirst();
    return found
        .filter(d -> p.shape().doorway(d).points().size() > 1)
        .map(d -> jambs(p, d))
        .orElse(List.of());
  }

  private static List<Grip> jambs(FloorPicture p, Doorway d) {
    List<Vec> gap = p.shape().doorway(d).points();
    Line wall = p.shape().pieces().get(d.piece());
    double first = d.offset().mm();
    double last = first + d.width().mm();
    return List.of(
        Grip.square(
            gap.get(0),
            t -> {
              double at = Math.min(Walls.along(wall, t.at()), last - NARROWEST);
              return put(p.area(), d, at, last);
            }),
        Grip.square(
            gap.get(gap.size() - 1),
            t -> {
              double at = Math.max(Walls.along(wall, t.at()), first + NARROWEST);
              return put(p.area(), d, first, at);
            }));
  }

  private static Optional<Edit> put(FloorArea area, Doorway d, double from, double to) {
    Length width = Length.mm(to - from);
    return Optional.of(
        new OutlineEdit.PutDoorway(area.id(), d.at(d.piece(), Length.mm(from)).withWidth(width)));
  }
}
