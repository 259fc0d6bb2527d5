package slabwright.shape.fit;

import java.util.Optional;
import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;

/**
 * Linear equations with a symmetric matrix that is positive definite, such as the normal equations
 * of least squares. Solved by Cholesky with every diagonal scaled to 1, so that a pivot says how
 * well an unknown is determined whatever its unit and weight.
 */
public final class SymmetricSystem {
  /** A scaled pivot below this is rounding noise: the equations leave something free. */
  public static final double SMALLEST_PIVOT = 1e-12;

  private static final double MOST_ASYMMETRY = 1e-9;

  private final double[][] matrix;
  private final double[] right;
  private final double[] scale;

  /**
   * Copies both.
   *
   * @param matrix n by n
   * @param right n values
   */
  public SymmetricSystem(double[][] matrix, double[] right) {
    int n = right.length;
    this.matrix = new double[n][n];
    this.right = new double[n];
    this.scale = new double[n];
    for (int i = 0; i < n; i++) {
      scale[i] = matrix[i][i] > 0 ? 1 / Math.sqrt(matrix[i][i]) : 1;
    }
    for (int i = 0; i < n; i++) {
      this.right[i] = right[i] * scale[i];
      for (int j = 0; j < n; j++) {
        this.matrix[i][j] = matrix[i][j] * (scale[i] * scale[j]);
      }
    }
  }

  /**
   * The unknowns.
   *
   * @param damping added to the scaled diagonal; 0 solves the equations as they are
   * @return empty when they leave something free
   */
  public Optional<double[]> solve(double damping) {
    return factor(damping)
        .map(f -> f.getSolver().solve(new ArrayRealVector(right, false)).toArray())
        .map(this::unscaled);
  }

  private double[] unscaled(double[] x) {
    for (int i = 0; i < x.length; i++) {
      x[i] *= scale[i];
    }
    return x;
  }

  /**
   * The inverse of the matrix.
   *
   * @param damping as in {@link #solve}
   * @return empty when the equations leave something free
   */
  public Optional<double[][]> inverse(double damping) {
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
          new CholeskyDecomposition(
              new Array2DRowRealMatrix(raised, false), MOST_ASYMMETRY, SMALLEST_PIVOT));
    } catch (MathIllegalArgumentException notPositive) {
      return Optional.empty();
    }
  }
}
