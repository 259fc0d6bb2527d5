package slabwright.desk.model;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Symbol;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.OutlineShape;
import slabwright.site.PieceKind;

/** The inks of walls, open edges, kerbs and doorways. */
final class OutlineInks {
  private static final double WALL = 1.0;

  private OutlineInks() {}

  static List<Ink> of(FloorArea area, OutlineShape shape) {
    List<Ink> inks = new ArrayList<>();
    boolean allWalls = area.outline().stream().allMatch(p -> p.kind() == PieceKind.WALL);
    if (allWalls) {
      inks.add(Stroke.rings(pen(PieceKind.WALL), List.of(shape.ring())));
    } else {
      for (int i = 0; i < shape.pieces().size(); i++) {
        PieceKind kind = area.outline().get(i).kind();
        inks.add(Stroke.lines(pen(kind), List.of(shape.pieces().get(i))));
      }
    }
    area.doorways().forEach(d -> inks.addAll(doorway(d, shape)));
    return inks;
  }

  private static Pen pen(PieceKind kind) {
    return switch (kind) {
      case WALL -> Pen.of(WALL, Palette.INK);
      case OPEN_EDGE -> Pen.of(0.4, Palette.SOFT).dashed(2.2, 1.1);
      case KERB -> Pen.of(0.8, Palette.OLIVE).dashed(5, 0.5);
    };
  }

  private static List<Ink> doorway(Doorway d, OutlineShape shape) {
    Line gap = shape.doorway(d);
    if (gap.points().size() < 2) {
      return List.of();
    }
    List<Ink> inks = new ArrayList<>();
    inks.add(Stroke.lines(Pen.of(WALL + 0.5, Palette.WHITE), List.of(gap)));
    Pen pen = Pen.of(0.7, d.wayIn() ? Palette.RED : Palette.SOFT);
    inks.add(Stroke.lines(d.wayIn() ? pen.dashed(1.4, 0.9) : pen.dashed(3, 1), List.of(gap)));
    if (d.wayIn()) {
      inks.add(arrow(gap, shape.floorOnLeft()));
    }
    return inks;
  }

  /** An arrow outside the doorway that points onto the floor. */
  private static Ink arrow(Line gap, boolean floorOnLeft) {
    Vec a = gap.points().get(0);
    Vec b = gap.points().get(gap.points().size() - 1);
    Vec in = b.minus(a).unit().left().times(floorOnLeft ? 1 : -1);
    double turn = Math.toDegrees(in.angle()) - 90;
    Vec at = a.towards(b, 0.5).minus(in.times(700));
    return Symbol.of(Symbol.Kind.WAY_IN, at, 7, Palette.RED).turned(turn);
  }

  static Thing thing(Doorway d, OutlineShape shape) {
    return new Thing(new Pick.OfDoorway(d.id()), Region.empty(), shape.doorway(d).points());
  }
}
