package slabwright.site;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Arcs;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * A floor area's outline as points, arcs flattened within a tolerance in mm. Frame: the site's.
 *
 * @param pieces one line a piece, in order, each from its corner to the next corner
 */
public record OutlineShape(List<Line> pieces) {
  public static OutlineShape of(List<OutlinePiece> outline, double tolerance) {
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < outline.size(); i++) {
      OutlinePiece piece = outline.get(i);
      Vec end = outline.get((i + 1) % outline.size()).from().vec();
      List<Vec> points = Arcs.arc(piece.from().vec(), end, piece.rise().mm(), tolerance);
      points.add(end);
      lines.add(new Line(points));
    }
    return new OutlineShape(lines);
  }

  /** The whole outline as one ring, as drawn (either way round). */
  public Ring ring() {
    List<Vec> points = new ArrayList<>();
    for (Line piece : pieces) {
      points.addAll(piece.points().subList(0, piece.points().size() - 1));
    }
    return new Ring(points);
  }

  public Region region() {
    return Region.of(ring());
  }

  /** Whether the outline runs counter-clockwise, so that the floor lies to the left of travel. */
  public boolean floorOnLeft() {
    return ring().signedArea() > 0;
  }

  /** The part of its piece that a doorway takes up; shorter where the piece ends first. */
  public Line doorway(Doorway d) {
    return part(pieces.get(d.piece()), d.offset().mm(), d.offset().mm() + d.width().mm());
  }

  /** The part of a piece between two distances along it, shorter where the piece ends first. */
  public Line part(int piece, double from, double to) {
    return part(pieces.get(piece), from, to);
  }

  /** The part of a line between two distances along it. */
  static Line part(Line line, double from, double to) {
    List<Vec> out = new ArrayList<>();
    double at = 0;
    for (int i = 0; i + 1 < line.points().size(); i++) {
      Vec a = line.points().get(i);
      Vec b = line.points().get(i + 1);
      double step = a.distanceTo(b);
      double begin = Math.max(from, at);
      double end = Math.min(to, at + step);
      if (begin < end) {
        if (out.isEmpty()) {
          out.add(a.towards(b, (begin - at) / step));
        }
        out.add(a.towards(b, (end - at) / step));
      }
      at += step;
    }
    return new Line(out);
  }
}
