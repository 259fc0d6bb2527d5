package slabwright.inlay.panel;

import io.soabase.recordbuilder.core.RecordBuilder;

/**
 * The vinyl roll, in mm.
 *
 * @param width the film's full width
 * @param usableWidth the width the cutter can use
 * @param longestPiece the longest piece that is cut and handled as one
 */
@RecordBuilder
public record Roll(double width, double usableWidth, double longestPiece)
    implements RollBuilder.With {
  /** What a cutter leaves at each edge of the film when nothing else is known. */
  public static final double EDGE = 12;

  /**
   * The longest piece, mm, that two people lay without stretching it when nothing else is said:
   * common practice, no source.
   */
  public static final double LONGEST_PIECE = 3600;

  /** A roll of which 12 mm at each edge cannot be cut, with pieces of any length. */
  public static Roll ofWidth(double mm) {
    return new Roll(mm, mm - 2 * EDGE, Double.POSITIVE_INFINITY);
  }
}
