package slabwright.tape.leastsquares;

import java.util.List;
import java.util.Optional;
import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;

/**
 * The normal equations of one linearisation, weights 1/sd². Solved with every diagonal scaled to 1,
 * so that a pivot says how well an unknown is determined whatever its unit and weight.
 */
final class NormalEquations {
  /** A scaled pivot below this is rounding noise: the readings leave something free. */
  static final double SMALLEST_PIVOT = 1e-12;

  private final double[][] matrix;
  private final double[] right;
  private final double[] scale;
  private double sumOfSquares;

  NormalEquations(double[] xy, Datum datum, List<Observation> observations) {
    int n = datum.count();
    matrix = new double[n][n];
    right = new double[n];
    scale = new double[n];
    DesignRow row = new DesignRow();
    for (Observation o : observations) {
      o.slopes(xy, row);
      take(row, datum, o.misfit(xy) / o.sd(), o.sd());
    }
    scaleToOne();
  }

  private void take(DesignRow row, Datum datum, double misfit, double sd) {
    sumOfSquares += misfit * misfit;
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

  private void scaleToOne() {
    for (int i = 0; i < scale.length; i++) {
      scale[i] = matrix[i][i] > 0 ? 1 / Math.sqrt(matrix[i][i]) : 1;
    }
    for (int i = 0; i < scale.length; i++) {
      right[i] *= scale[i];
      for (int j = 0; j < scale.length; j++) {
        matrix[i][j] *= scale[i] * scale[j];
      }
    }
  }

  /** The weighted sum of squared misfits at the linearisation. */
  double sumOfSquares() {
    return sumOfSquares;
  }

  /** How far each unknown should move, with the diagonal raised by {@code damping}. */
  Optional<double[]> step(double damping) {
    return factor(damping)
        .map(f -> f.getSolver().solve(new ArrayRealVector(right, false)).toArray())
        .map(this::unscaled);
  }

  private double[] unscaled(double[] step) {
    for (int i = 0; i < step.length; i++) {
      step[i] *= scale[i];
    }
    return step;
  }

  /** The cofactors of the unknowns; empty when the readings leave something free. */
  Optional<double[][]> inverse(double damping) {
    return factor(damping).map(f -> unscaled(f.getSolver().getInverse().getData()));
  }

  private double[][] unscaled(double[][] inverse) {
    for (int i = 0; i < scale.length; i++) {
      for (int j = 0; j < scale.length; j++) {
        inverse[i][j] *= scale[i] * scale[j];
      }
    }
    return inverse;
  }

  private Optional<CholeskyDecomposition> factor(double damping) {
    double[][] raised = new double[matrix.length][];
    for (int i = 0; i < raised.length; i++) {
      raised[i] = matrix[i].clone();
      raised[i][i] += damping;
    }
    try {
      return Optional.of(
          new CholeskyDecomposition(new Array2DRowRealMatrix(raised, false), 1e-9, SMALLEST_PIVOT));
    } catch (MathIllegalArgumentException notPositive) {
      return Optional.empty();
    }
  }
}
