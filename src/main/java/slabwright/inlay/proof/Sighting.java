package slabwright.inlay.proof;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A drawing looked at for one stencil: where the blank and its panels may lie in it. */
final class Sighting {
  /** So much of the blank seen in one place needs no look at its panels. */
  private static final double WHOLE_IS_FINE = 0.97;

  final ProofPlan plan;
  final DrawingScale scale;
  final DrawingContours contours;
  final PlannedPiece blank;
  private final List<PlannedPiece> panels;
  private final PoseSearch search;
  private final Map<PlannedPiece, List<PoseFit>> fits = new HashMap<>();

  private Sighting(
      ProofPlan plan,
      PlannedPiece blank,
      List<PlannedPiece> panels,
      DrawingScale scale,
      DrawingContours contours) {
    this.plan = plan;
    this.blank = blank;
    this.panels = panels;
    this.scale = scale;
    this.contours = contours;
    search = new PoseSearch(contours, ScaleRange.FOR_CUTTING, plan.apart());
  }

  static Sighting of(ProofPlan plan, ShopDrawing drawing) {
    return of(plan, drawing, DrawingContours.of(drawing));
  }

  /**
   * The same of a drawing whose contours are known.
   *
   * @param seen the drawing's
   */
  static Sighting of(ProofPlan plan, ShopDrawing drawing, DrawingContours seen) {
    DrawingScale scale = DrawingScale.of(plan, drawing, seen);
    return new Sighting(
        plan,
        new PlannedPiece("", plan.blank(), plan.openings()),
        plan.pieces(),
        scale,
        scale.drawing().equals(drawing) ? seen : DrawingContours.of(scale.drawing()));
  }

  /** The same of another drawing whose scale is settled. */
  Sighting with(DrawingScale other) {
    return new Sighting(plan, blank, panels, other, DrawingContours.of(other.drawing()));
  }

  boolean isEmpty() {
    return contours.rings().isEmpty() || plan.openings().isEmpty();
  }

  /** Poses of the whole blank, best first. */
  List<PoseFit> whole() {
    return fits(blank);
  }

  /** The panels that have anything to cut. */
  List<PlannedPiece> panels() {
    return panels;
  }

  /** Poses of a piece, best first. */
  List<PoseFit> fits(PlannedPiece piece) {
    return fits.computeIfAbsent(piece, p -> search.fits(p, x -> true));
  }

  /** Poses of a piece at about this scale, looked for anew. */
  List<PoseFit> fitsOfScale(PlannedPiece piece, ScaleRange scales) {
    return search.fits(piece, p -> scales.holds(p.scale()));
  }

  boolean needsPanels() {
    return plan.panels().size() > 1 && (plan.apart() || top(whole()) < WHOLE_IS_FINE);
  }

  /**
   * How much of the drawing looks like the stencil, or like one of its panels: the best overlap, 0
   * to 1.
   */
  double likeness() {
    if (isEmpty()) {
      return 0;
    }
    double best = top(whole());
    if (needsPanels()) {
      for (PlannedPiece panel : panels) {
        best = Math.max(best, top(fits(panel)));
      }
    }
    return best;
  }

  static double top(List<PoseFit> fits) {
    return fits.isEmpty() ? 0 : fits.get(0).overlap();
  }
}
