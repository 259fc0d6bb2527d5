package slabwright.shape;

/**
 * How far up the ladder of noding methods it was necessary to climb; the first that holds is used.
 */
public enum NodingMethod {
  /** Crossings were rounded to the grid, and that was all. */
  PLAIN,
  /** Rounding made new crossings or drew an edge through a corner's grid cell: noded in turn. */
  PLAIN_AGAIN,
  /** That found no end; all corners and edges were snapped to cells until nothing changed. */
  SNAP_ROUNDED,
  /**
   * Nor did that: nothing crosses, but some edge still passes through a corner's cell. A region
   * read off may change by a grid step when it is filled again.
   */
  NOT_SETTLED
}
