package slabwright.inlay.proof;

/**
 * How well a pose fits.
 *
 * @param overlap intersection over union, 0 to 1, with the better of the two polarities
 * @param inside share of the smaller of the two areas that lies in the other, 0 to 1
 * @param showsMask whether the drawing's area is the mask rather than the openings
 */
record PoseFit(Pose pose, double overlap, double inside, boolean showsMask) {
  private static final double MOSTLY = 0.55;
  private static final double HARDLY = 0.25;
  private static final double PARTLY = 0.3;
  private static final double WHOLLY_INSIDE = 0.95;

  /** Whether it is worth a close look: other letters overlap little. */
  boolean mayBeFound() {
    return overlap >= HARDLY;
  }

  /** Whether this is the graphic at all, be it with much missing or added. */
  boolean isFound() {
    return overlap >= MOSTLY || (overlap >= PARTLY && inside >= WHOLLY_INSIDE);
  }
}
