package slabwright.inlay.proof;

import java.util.Optional;
import slabwright.shape.Vec;

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
    double[][] a = new double[4][5];
    for (int i = 0; i < sheet.boundary.size(); i += stride) {
      Vec p = sheet.boundary.get(i);
      Vec q = pose.apply(p);
      Optional<ContourSamples.Sample> near = drawn.nearest(q, reach);
      if (near.isPresent()) {
        Vec n = near.get().normal();
        double x = p.x();
        double y = pose.mirrored() ? -p.y() : p.y();
        double[] row = {n.x() * x + n.y() * y, n.y() * x - n.x() * y, n.x(), n.y()};
        accumulate(a, row, near.get().at().minus(q).dot(n));
      }
    }
    double[] d = solve(a);
    return new Pose(
        pose.mirrored(), pose.re() + d[0], pose.im() + d[1], pose.dx() + d[2], pose.dy() + d[3]);
  }

  private static void accumulate(double[][] a, double[] row, double value) {
    for (int i = 0; i < 4; i++) {
      for (int j = 0; j < 4; j++) {
        a[i][j] += row[i] * row[j];
      }
      a[i][4] += row[i] * value;
    }
  }

  /** Gauss with pivots; a direction that nothing fixes (a circle's turn) is left alone. */
  private static double[] solve(double[][] a) {
    double[] x = new double[4];
    double largest = 0;
    for (int i = 0; i < 4; i++) {
      largest = Math.max(largest, a[i][i]);
      a[i][i] += 1e-9 * a[i][i];
    }
    for (int k = 0; k < 4; k++) {
      int pivot = k;
      for (int i = k + 1; i < 4; i++) {
        pivot = Math.abs(a[i][k]) > Math.abs(a[pivot][k]) ? i : pivot;
      }
      double[] swap = a[k];
      a[k] = a[pivot];
      a[pivot] = swap;
      if (Math.abs(a[k][k]) <= 1e-13 * largest) {
        return new double[4];
      }
      for (int i = k + 1; i < 4; i++) {
        double f = a[i][k] / a[k][k];
        for (int j = k; j < 5; j++) {
          a[i][j] -= f * a[k][j];
        }
      }
    }
    for (int k = 3; k >= 0; k--) {
      double sum = a[k][4];
      for (int j = k + 1; j < 4; j++) {
        sum -= a[k][j] * x[j];
      }
      x[k] = sum / a[k][k];
    }
    return x;
  }
}
