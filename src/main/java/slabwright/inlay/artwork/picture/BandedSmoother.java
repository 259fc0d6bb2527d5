package slabwright.inlay.artwork.picture;

/**
 * A smooth curve through points: least squares with a price on the third derivative, after E.
 * Whittaker, <i>Proceedings of the Edinburgh Mathematical Society</i> 41 (1923) 63–75 (from
 * memory). The third derivative, because it leaves a circle its size.
 */
final class BandedSmoother {
  private static final int BAND = 3;

  private final double[] t;
  private final double[] weight;

  BandedSmoother(double[] t, double[] weight) {
    this.t = t;
    this.weight = weight;
  }

  /**
   * Smooths columns of values in place.
   *
   * @param price of the third derivative at each point, by the sixth power of a length
   */
  void smooth(double[] price, double[]... columns) {
    int n = t.length;
    if (n <= BAND) {
      return;
    }
    double[][] band = new double[BAND + 1][n];
    for (int i = 0; i < n; i++) {
      band[0][i] = weight[i];
    }
    double[] c = new double[BAND + 1];
    for (int i = 0; i + BAND < n; i++) {
      double p = (price[i + 1] + price[i + 2]) / 2 * (t[i + BAND] - t[i]) / BAND;
      thirdDerivative(i, c);
      for (int a = 0; a <= BAND; a++) {
        for (int b = a; b <= BAND; b++) {
          band[b - a][i + a] += p * c[a] * c[b];
        }
      }
    }
    for (double[] column : columns) {
      for (int i = 0; i < n; i++) {
        column[i] *= weight[i];
      }
    }
    factorise(band);
    for (double[] column : columns) {
      solve(band, column);
    }
  }

  private void thirdDerivative(int i, double[] c) {
    for (int a = 0; a <= BAND; a++) {
      double product = 6;
      for (int b = 0; b <= BAND; b++) {
        product /= a == b ? 1 : t[i + a] - t[i + b];
      }
      c[a] = product;
    }
  }

  /** L D Lᵀ in place: {@code band[0]} becomes D, {@code band[k][i]} becomes L at (i + k, i). */
  private static void factorise(double[][] band) {
    int n = band[0].length;
    for (int i = 0; i < n; i++) {
      for (int k = 1; k <= BAND && k <= i; k++) {
        double l = band[k][i - k];
        band[0][i] -= l * l * band[0][i - k];
      }
      for (int k = 1; k <= BAND && i + k < n; k++) {
        double v = band[k][i];
        for (int m = 1; m + k <= BAND && m <= i; m++) {
          v -= band[m][i - m] * band[m + k][i - m] * band[0][i - m];
        }
        band[k][i] = v / band[0][i];
      }
    }
  }

  private static void solve(double[][] band, double[] v) {
    int n = v.length;
    for (int i = 0; i < n; i++) {
      for (int k = 1; k <= BAND && k <= i; k++) {
        v[i] -= band[k][i - k] * v[i - k];
      }
    }
    for (int i = 0; i < n; i++) {
      v[i] /= band[0][i];
    }
    for (int i = n - 1; i >= 0; i--) {
      for (int k = 1; k <= BAND && i + k < n; k++) {
        v[i] -= band[k][i] * v[i + k];
      }
    }
  }
}
