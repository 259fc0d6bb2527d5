package slabwright.inlay.proof;

import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/**
 * The drawing laid on one sheet of the plan.
 *
 * @param showsMask whether the drawing's area is the mask
 */
record PieceComparison(Region drawn, Region missing, Region added, boolean showsMask) {
  /** Slivers narrower than twice this come from redrawing, not from another shape; mm. */
  private static final double SLIVER_MM = 0.6;

  private static final double TOLERANCE_MM = 0.1;
  private static final double LEAST_SHARE = 0.0005;

  static PieceComparison of(PlannedPiece sheet, PoseFit fit, Region area) {
    Region here = area.map(fit.pose().affine().inverse());
    Region vinyl = Region.rectangle(sheet.bounds);
    Region open = fit.showsMask() ? vinyl.minus(here) : vinyl.intersect(here);
    Region missing = real(sheet, sheet.openings.minus(open));
    Region added = real(sheet, open.minus(sheet.openings));
    return new PieceComparison(open, missing, added, fit.showsMask());
  }

  private static Region real(PlannedPiece sheet, Region difference) {
    double least = LEAST_SHARE * sheet.openings.area();
    return Region.union(
        difference.opened(SLIVER_MM, TOLERANCE_MM).parts().stream()
            .filter(part -> part.area() >= least && !isRim(part.bounds(), sheet.bounds))
            .toList());
  }

  /** The strip between the drawn edge of the blank and the planned one is no piece. */
  private static boolean isRim(Bounds part, Bounds blank) {
    Vec size = new Vec(Math.min(part.width(), part.height()), 0);
    double thin = 0.005 * Math.max(blank.width(), blank.height());
    boolean frame = part.width() > 0.99 * blank.width() && part.height() > 0.99 * blank.height();
    boolean touches =
        part.minX() <= blank.minX() + thin
            || part.minY() <= blank.minY() + thin
            || part.maxX() >= blank.maxX() - thin
            || part.maxY() >= blank.maxY() - thin;
    return frame || (touches && size.x() < thin);
  }
}
