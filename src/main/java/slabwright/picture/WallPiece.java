package slabwright.picture;

import java.util.List;
import slabwright.shape.Line;
import slabwright.site.PieceKind;

/**
 * One piece of the outline, standing.
 *
 * @param foot from its corner to the next, the floor to the left
 * @param openings doorways in it, along the foot
 * @param waysIn those of them that one comes in by
 */
record WallPiece(Line foot, PieceKind kind, double height, List<Line> openings, List<Line> waysIn) {
  WallPiece {
    waysIn = List.copyOf(waysIn);
    openings = List.copyOf(openings);
  }
}
