package slabwright.floor;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import slabwright.shape.Region;

/**
 * Sorts hand work. What the body covers but the head does not grind is an edge strip. Of the rest,
 * a piece no larger than what a machine leaves in a corner of 60° is a corner, a larger one a
 * pocket.
 */
final class HandWork {
  /** What a disc of radius 1 leaves in a corner of 60°: cot 30° − π/3. */
  private static final double CORNER = Math.sqrt(3) - Math.PI / 3;

  /** Pieces smaller than this are rounding; mm². */
  private static final double CRUMB = 1;

  private HandWork() {}

  /**
   * Sorts the pieces.
   *
   * @param regions by kind, corners still among the pockets
   * @param half half the gap that the smallest machine needs, mm; 0 when there is none
   */
  static List<HandPiece> sort(Map<HandKind, Region> regions, double half) {
    List<HandPiece> pieces = new ArrayList<>();
    for (HandKind kind :
        List.of(HandKind.TRENCH, HandKind.HAND_ONLY, HandKind.EDGE_STRIP, HandKind.POCKET)) {
      for (Region part : regions.getOrDefault(kind, Region.empty()).parts()) {
        if (part.area() >= CRUMB) {
          boolean corner = kind == HandKind.POCKET && part.area() <= CORNER * half * half;
          pieces.add(new HandPiece(corner ? HandKind.CORNER : kind, part));
        }
      }
    }
    return pieces;
  }
}
