package slabwright.figures;

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
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.OutlinePiece;
import slabwright.site.OutlineShape;
import slabwright.site.PieceKind;
import slabwright.site.Spot;

/**
 * A floor area as inks in the site's frame; the desk and the sheets draw the same ones. Words are
 * not among them: each finds room for them in its own way.
 */
public final class AreaInks {
  /** How far arcs may be flattened, mm of floor. */
  public static final double TOLERANCE = 0.5;

  private static final double SIGN_SIZE = 5;

  private AreaInks() {}

  /** The outline: walls heavy, kerbs in two weights, open edges dashed. */
  public static List<Ink> outline(FloorArea area) {
    List<Ink> inks = new ArrayList<>();
    OutlineShape shape = OutlineShape.of(area.outline(), TOLERANCE);
    if (area.outline().stream().allMatch(p -> p.kind() == PieceKind.WALL)) {
      inks.add(Stroke.rings(MarkStyles.WALL, List.of(shape.ring())));
    } else {
      for (int i = 0; i < area.outline().size(); i++) {
        inks.addAll(piece(area.outline().get(i), shape.pieces().get(i)));
      }
    }
    area.doorways().forEach(d -> inks.addAll(doorway(d, shape)));
    return inks;
  }

  private static List<Ink> piece(OutlinePiece piece, Line line) {
    return switch (piece.kind()) {
      case WALL -> List.of(Stroke.lines(MarkStyles.WALL.rounded(), List.of(line)));
      case KERB ->
          List.of(
              Stroke.lines(Pen.of(1.1, Palette.INK), List.of(line)),
              Stroke.lines(Pen.of(0.5, Palette.WHITE), List.of(line)));
      case OPEN_EDGE ->
          List.of(Stroke.lines(Pen.of(0.4, Palette.INK).dashed(4, 1.5), List.of(line)));
    };
  }

  /** A doorway: the wall opened, and a dashed line across. */
  public static List<Ink> doorway(Doorway d, OutlineShape shape) {
    Line line = shape.doorway(d);
    Pen across = d.wayIn() ? MarkStyles.WAY_IN : Pen.of(0.3, Palette.SOFT).dashed(1.2, 1);
    return List.of(
        Stroke.lines(Pen.of(1.5, Palette.WHITE), List.of(line)),
        Stroke.lines(across, List.of(line)));
  }

  /** A mark with the look of its kind: an area, a line or a sign. */
  public static List<Ink> mark(Mark mark, Region floor) {
    Form form = mark.form();
    if (form instanceof Form.Trace t) {
      Line line = new Line(t.path().stream().map(Spot::vec).toList());
      return List.of(Stroke.lines(MarkStyles.pen(mark.kind().type()), List.of(line)));
    } else if (form instanceof Form.Place p) {
      return List.of(sign(mark, p.at().vec()));
    }
    Region region = form.region(TOLERANCE).intersect(floor);
    return MarkStyles.of(mark.kind().type()).on(region);
  }

  /** The sign of a mark that is a place. */
  public static Symbol sign(Mark mark, Vec at) {
    return Symbol.of(
        MarkStyles.sign(mark.kind().type()), at, SIGN_SIZE, MarkStyles.colour(mark.kind().type()));
  }
}
