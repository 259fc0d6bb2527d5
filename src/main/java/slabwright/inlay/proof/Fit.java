package slabwright.inlay.proof;

/**
 * How well a pose fits.
 *
 * @param overlap intersection over union, 0 to 1, with the better of the two polarities
 * @param showsMask whether the drawing's area is the mask rather than the openings
 */
record Fit(Pose pose, double overlap, boolean showsMask) {}
