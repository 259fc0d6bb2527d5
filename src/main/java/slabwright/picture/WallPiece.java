package slabwright.picture;

import java.util.List;
import slabwright.shape.Line;
import slabwright.site.PieceKind;

/**
 * One piece of the outline, standing.
 *
 * @param foot from its corner to the next, the floor to the left
 * @param openings doorways in it, along the foot
 */
record WallPiece(Line foot, PieceKind kind, double height, List<Line> openings) {
  WallPiece {
    openings = List.copyOf(openings);
  }
}
