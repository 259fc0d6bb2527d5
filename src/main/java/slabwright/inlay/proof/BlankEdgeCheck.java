package slabwright.inlay.proof;

import java.util.List;
import java.util.Optional;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * Whether a sheet's edge is drawn, and where it should be. A size or stretch that openings and edge
 * share is no fault of the edge; so is a turn or shift of all its sides.
 */
final class BlankEdgeCheck {
  private static final double STEP_MM = 4;
  private static final double MOST_SAMPLES = 2000;
  private static final double SEEN_SHARE = 0.004;
  private static final double SEEN_MM = 8;
  private static final double DRAWN_SHARE = 0.6;
  private static final double FARTHEST_MM = 60;
  private static final double CUT_THROUGH_MM = 2;

  private final ProofLimits limits;
  private final PlannedPiece sheet;
  private final BlankFit fit;
  private final ContourSegments drawn;
  private double worst;
  private Vec at = Vec.ZERO;
  private double seen;

  /**
   * Measures.
   *
   * @param strain of the openings
   * @param rings the drawing in a frame where its openings lie on the planned ones, at the
   *     drawing's own size
   */
  BlankEdgeCheck(ProofLimits limits, PlannedPiece sheet, DrawnStrain strain, List<Ring> rings) {
    this.limits = limits;
    this.sheet = sheet;
    drawn = new ContourSegments(rings);
    Bounds planned = sheet.bounds;
    Bounds strained = strained(strain, planned);
    BlankFit shared = BlankFit.of(rings, strained);
    BlankFit first = shared.found() ? shared : BlankFit.of(rings, planned);
    boolean wide = nearer(first.width(), strained.width(), planned.width());
    boolean high = nearer(first.height(), strained.height(), planned.height());
    Bounds expected =
        new Bounds(
            wide ? strained.minX() : planned.minX(),
            high ? strained.minY() : planned.minY(),
            wide ? strained.maxX() : planned.maxX(),
            high ? strained.maxY() : planned.maxY());
    fit = BlankFit.of(rings, expected);
    measure(expected);
  }

  private static Bounds strained(DrawnStrain strain, Bounds b) {
    Vec m = b.middle();
    double w = b.width() * strain.xx() / 2;
    double h = b.height() * strain.yy() / 2;
    return new Bounds(m.x() - w, m.y() - h, m.x() + w, m.y() + h);
  }

  private static boolean nearer(double drawn, double one, double other) {
    return Math.abs(drawn - one) < Math.abs(drawn - other);
  }

  private void measure(Bounds expected) {
    Ring ring = Ring.rectangle(expected.minX(), expected.minY(), expected.maxX(), expected.maxY());
    Affine there = fit.map(expected);
    double step = Math.max(STEP_MM, ring.length() / MOST_SAMPLES);
    double size = Math.max(expected.width(), expected.height());
    double near = Math.max(SEEN_MM, SEEN_SHARE * size);
    Bounds inner = sheet.bounds.grown(-CUT_THROUGH_MM);
    boolean cutThrough = !inner.including(sheet.openings.bounds()).equals(inner);
    int all = 0;
    int met = 0;
    for (EdgeSample s : EdgeSample.dense(List.of(ring), step)) {
      if (cutThrough && sheet.openings.distanceTo(s.at()) < CUT_THROUGH_MM) {
        continue;
      }
      double far =
          drawn
              .nearest(there.apply(s.at()), FARTHEST_MM)
              .map(ContourSegments.Near::distance)
              .orElse(FARTHEST_MM);
      all++;
      met += far <= near ? 1 : 0;
      if (far > worst) {
        worst = far;
        at = s.at();
      }
    }
    seen = all == 0 ? 1 : (double) met / all;
  }

  BlankFit fit() {
    return fit;
  }

  /** The largest deviation of the edge, mm. */
  double worst() {
    return seen < DRAWN_SHARE ? 0 : worst;
  }

  Optional<ProofFault> fault() {
    if (seen < DRAWN_SHARE) {
      return Optional.of(new ProofFault.EdgeMissing(sheet.panel));
    }
    return worst > limits.edge()
        ? Optional.of(new ProofFault.BlankEdgeOff(sheet.panel, at, worst))
        : Optional.empty();
  }
}
