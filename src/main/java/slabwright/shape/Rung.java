package slabwright.shape;

/**
 * How far up the ladder of noding methods it was necessary to climb; the first that holds is used.
 */
public enum Rung {
  /** Crossings were rounded to the grid and nothing else came near an edge. */
  PLAIN,
  /** Rounding made new crossings, which were noded in turn. */
  PLAIN_TWICE,
  /** Some corner came within half a grid step of an edge: corners and edges were snapped. */
  SNAP_ROUNDED,
  /** The snapped edges had to be snapped once more. */
  SNAP_ROUNDED_TWICE
}
