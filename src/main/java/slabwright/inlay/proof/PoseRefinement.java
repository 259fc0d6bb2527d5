package slabwright.inlay.proof;

import java.util.Optional;
import slabwright.shape.Vec;
import slabwright.shape.fit.SymmetricSystem;

/**
 * Brings a pose that is nearly right onto the drawing: least squares over a similarity's four
 * numbers of the distances from the plan's boundary points to the nearest drawn contour, measured
 * across it; points without a contour near them (missing pieces) do not count.
 */
final class PoseRefinement {
  /**
   * How far a contour may be from where it is looked for, as a share of the sheet; step by step.
   */
  private static final double[] REACH_SHARE = {0.018, 0.014, 0.01, 0.006, 0.003, 0.003};

  /** The first steps need not use every point. */
  private static final int[] STRIDE = {4, 4, 3, 2, 1, 1};

  /** Leaves alone a direction that nothing fixes, such as a circle's turn. */
  private static final double HOLD = 1e-9;

  private final PlannedPiece sheet;
  private final ContourSamples drawn;

  PoseRefinement(PlannedPiece sheet, ContourSamples drawn) {
    this.sheet = sheet;
    this.drawn = drawn;
  }

  Pose run(Pose start) {
    Pose pose = start;
    double size = Math.max(sheet.bounds.width(), sheet.bounds.height());
    for (int i = 0; i < STRIDE.length; i++) {
      pose = step(pose, REACH_SHARE[i] * size * start.scale(), STRIDE[i]);
    }
    return pose;
  }

  private Pose step(Pose pose, double reach, int stride) {
    double[][] matrix = new double[4][4];
    double[] right = new double[4];
    for (int i = 0; i < sheet.boundary.size(); i += stride) {
      Vec p = sheet.boundary.get(i);
      Vec q = pose.apply(p);
      Optional<ContourSamples.Sample> near = drawn.nearest(q, reach);
      if (near.isPresent()) {
        Vec n = near.get().normal();
        double x = p.x();
        double y = pose.mirrored() ? -p.y() : p.y();
        double[] row = {n.x() * x + n.y() * y, n.y() * x - n.x() * y, n.x(), n.y()};
        accumulate(matrix, right, row, near.get().at().minus(q).dot(n));
      }
    }
    double[] d = new SymmetricSystem(matrix, right).solve(HOLD).orElseGet(() -> new double[4]);
    return new Pose(
        pose.mirrored(), pose.re() + d[0], pose.im() + d[1], pose.dx() + d[2], pose.dy() + d[3]);
  }

  private static void accumulate(double[][] matrix, double[] right, double[] row, double value) {
    for (int i = 0; i < row.length; i++) {
      for (int j = 0; j < row.length; j++) {
        matrix[i][j] += row[i] * row[j];
      }
      right[i] += row[i] * value;
    }
  }
}
