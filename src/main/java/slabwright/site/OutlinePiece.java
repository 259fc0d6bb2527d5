package slabwright.site;

import slabwright.units.Length;

/**
 * One piece of an outline, from its corner to the next piece's corner.
 *
 * @param rise height of the arc over its chord in mm: positive bulges to the right of travel
 *     (outward on a counter-clockwise outline), negative to the left, 0 is straight
 */
public record OutlinePiece(Spot from, PieceKind kind, Length rise) {
  public static OutlinePiece wall(Spot from) {
    return new OutlinePiece(from, PieceKind.WALL, Length.ZERO);
  }
}
