package slabwright.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.OutlineShape;
import slabwright.site.PieceKind;
import slabwright.units.Length;

/** What stands around a floor area. */
final class WallSurroundings {
  /** Thickness that a wall is drawn with in plan, and of a kerb, mm. */
  static final double WALL = 150;

  private static final double KERB = 90;
  private static final double KERB_HEIGHT = 120;

  /** Height of a room that nobody measured, mm; a common one. */
  private static final double ROOM = 3000;

  private static final double TOLERANCE = 1;

  private WallSurroundings() {}

  static double height(FloorArea area) {
    return area.air().ceiling().map(Length::mm).orElse(ROOM);
  }

  /** Each piece with the floor to its left; open edges too, so that a view can leave them open. */
  static List<WallPiece> pieces(FloorArea area) {
    OutlineShape shape = OutlineShape.of(area.outline(), TOLERANCE);
    List<WallPiece> all = new ArrayList<>();
    for (int i = 0; i < area.outline().size(); i++) {
      PieceKind kind = area.outline().get(i).kind();
      double height =
          kind == PieceKind.WALL ? height(area) : kind == PieceKind.KERB ? KERB_HEIGHT : 0;
      List<Line> openings = new ArrayList<>();
      List<Line> waysIn = new ArrayList<>();
      for (Doorway d : area.doorways()) {
        Line gap = shape.doorway(d);
        if (d.piece() == i && gap.points().size() > 1) {
          Line held = shape.floorOnLeft() ? gap : reversed(gap);
          openings.add(held);
          if (d.wayIn()) {
            waysIn.add(held);
          }
        }
      }
      Line foot = shape.pieces().get(i);
      all.add(
          new WallPiece(
              shape.floorOnLeft() ? foot : reversed(foot), kind, height, openings, waysIn));
    }
    return all;
  }

  private static Line reversed(Line line) {
    List<slabwright.shape.Vec> back = new ArrayList<>(line.points());
    java.util.Collections.reverse(back);
    return new Line(back);
  }

  /** Walls cut through for a plan, outside the outline, doorways and other edges left open. */
  static Region cut(Region gross, List<WallPiece> pieces) {
    List<Region> gone = new ArrayList<>();
    for (WallPiece p : pieces) {
      if (p.kind() != PieceKind.WALL) {
        gone.add(Region.strip(p.foot(), WALL + 1));
      }
      p.openings().forEach(o -> gone.add(Region.strip(o, WALL + 1)));
    }
    Region ring = gross.offset(WALL, TOLERANCE).minus(gross);
    return gone.isEmpty() ? ring : ring.minus(Region.union(gone));
  }

  /** Kerbs seen from above. */
  static Optional<Region> kerbs(Region gross, List<WallPiece> pieces) {
    List<Region> strips =
        pieces.stream()
            .filter(p -> p.kind() == PieceKind.KERB)
            .map(p -> Region.strip(p.foot(), KERB).minus(gross))
            .toList();
    return strips.isEmpty() ? Optional.empty() : Optional.of(Region.union(strips));
  }
}
