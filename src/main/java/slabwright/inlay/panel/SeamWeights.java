package slabwright.inlay.panel;

/**
 * What a seam costs. The total is {@code edge} × mm of opening edge within {@code near} of a seam +
 * {@code loosePiece} × loose pieces cut + {@code sliver} × slivers + {@code roll} × mm of roll.
 *
 * <p>A sliver is a stretch of an opening's outline that crosses a panel's edge and comes back to it
 * within {@code sliverWidth} of it: the bit of vinyl or of opening between the two hangs on to that
 * edge alone.
 *
 * @param near how near, in mm, an opening edge must be to a seam to count
 * @param sliverWidth in mm
 */
public record SeamWeights(
    double near, double edge, double loosePiece, double sliver, double sliverWidth, double roll) {

  /**
   * Edges within 25 mm count once a mm; a cut loose piece as 300 mm of edge, a sliver under 10 mm
   * as 100 mm, and a metre of roll as 250 mm. Our own choice, no source.
   */
  public static SeamWeights usual() {
    return new SeamWeights(25, 1, 300, 100, 10, 0.25);
  }
}
