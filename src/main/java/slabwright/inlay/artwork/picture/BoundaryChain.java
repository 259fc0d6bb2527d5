package slabwright.inlay.artwork.picture;

/**
 * A border between two colours along the grid between pixels, from one place where three colours
 * meet to the next, or all the way round.
 *
 * @param x of its grid corners in walking order
 * @param y as x
 * @param left number of the colour on the left in walking order (y down), or outside
 * @param right as left
 * @param closed whether it comes back to its first corner, which is then also its last
 */
@SuppressWarnings("ArrayRecordComponent")
record BoundaryChain(int[] x, int[] y, int left, int right, boolean closed) {
  int steps() {
    return x.length - 1;
  }

  boolean onRim() {
    return left == LabelMap.OUTSIDE || right == LabelMap.OUTSIDE;
  }

  /** Direction of its first step. */
  int firstDirection() {
    return direction(0);
  }

  /** Direction in which its last corner is left when it is walked backwards. */
  int lastDirectionBack() {
    return PixelEdge.back(direction(steps() - 1));
  }

  int direction(int step) {
    int dx = x[step + 1] - x[step];
    int dy = y[step + 1] - y[step];
    return dx != 0
        ? (dx > 0 ? PixelEdge.RIGHT : PixelEdge.LEFT)
        : dy > 0 ? PixelEdge.DOWN : PixelEdge.UP;
  }
}
