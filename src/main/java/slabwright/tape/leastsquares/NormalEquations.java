package slabwright.tape.leastsquares;

import java.util.List;
import java.util.Optional;
import slabwright.shape.fit.SymmetricSystem;

/** The normal equations of one linearisation, weights 1/sd². */
final class NormalEquations {
  private final SymmetricSystem system;

  NormalEquations(double[] xy, Datum datum, List<Observation> observations) {
    int n = datum.count();
    double[][] matrix = new double[n][n];
    double[] right = new double[n];
    DesignRow row = new DesignRow();
    for (Observation o : observations) {
      o.slopes(xy, row);
      accumulate(matrix, right, row, datum, o.misfit(xy) / o.sd(), o.sd());
    }
    system = new SymmetricSystem(matrix, right);
  }

  private static void accumulate(
      double[][] matrix, double[] right, DesignRow row, Datum datum, double misfit, double sd) {
    for (int a = 0; a < row.size(); a++) {
      int i = datum.unknown(row.coordinate(a));
      if (i >= 0) {
        right[i] += row.slope(a) / sd * misfit;
        for (int b = 0; b < row.size(); b++) {
          int j = datum.unknown(row.coordinate(b));
          if (j >= 0) {
            matrix[i][j] += row.slope(a) * row.slope(b) / (sd * sd);
          }
        }
      }
    }
  }

  /** How far each unknown should move, with the scaled diagonal raised by {@code damping}. */
  Optional<double[]> step(double damping) {
    return system.solve(damping);
  }

  /** The cofactors of the unknowns; empty when the readings leave something free. */
  Optional<double[][]> inverse(double damping) {
    return system.inverse(damping);
  }
}
