package slabwright.tape.leastsquares;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What the geometry says about each reading at given corners: how much the others check it, and how
 * far out it stands. Definitions after Baarda: redundancy number {@code r = 1 - a Q aᵀ / sd²}, test
 * statistic {@code w = v / (sd √r)}.
 */
public final class Reliability {
  /** A reading checked less than this by the others is taken as not checked at all. */
  public static final double UNCHECKED = 1e-4;

  private final double[] xy;
  private final Datum datum;
  private final List<Observation> observations;
  private final double[][] cofactors;
  private final DesignRow[] rows;
  private final double[] redundancy;

  private Reliability(
      double[] xy, Datum datum, List<Observation> observations, double[][] cofactors) {
    this.xy = xy;
    this.datum = datum;
    this.observations = observations;
    this.cofactors = cofactors;
    rows = new DesignRow[observations.size()];
    redundancy = new double[observations.size()];
    for (int i = 0; i < redundancy.length; i++) {
      rows[i] = new DesignRow();
      observations.get(i).slopes(xy, rows[i]);
      redundancy[i] = Math.min(1, Math.max(0, 1 - along(i, spread(i))));
    }
  }

  /** Empty when the readings leave something free, by rank or in practice. */
  public static Optional<Reliability> at(double[] xy, Datum datum, List<Observation> observations) {
    return held(xy, datum, observations, 0).filter(q -> q.fixes());
  }

  /** The same with every unknown held a little, so that what is free gets a large finite spread. */
  public static Optional<Reliability> held(
      double[] xy, Datum datum, List<Observation> observations, double hold) {
    return new NormalEquations(xy, datum, observations)
        .inverse(hold)
        .map(q -> new Reliability(xy, datum, observations, q));
  }

  /** Free in practice: a place known to no better than a quarter of the room's extent. */
  private boolean fixes() {
    double extent = Arrays.stream(xy).max().orElse(0) - Arrays.stream(xy).min().orElse(0);
    for (int i = 0; i < cofactors.length; i++) {
      if (!(cofactors[i][i] < extent * extent / 16)) {
        return false;
      }
    }
    return true;
  }

  public double redundancy(int i) {
    return redundancy[i];
  }

  boolean checked(int i) {
    return redundancy[i] > UNCHECKED;
  }

  /** Adjusted value less value read. */
  double residual(int i) {
    return -observations.get(i).misfit(xy);
  }

  /** The standardised residual; 0 for a reading that nothing checks. */
  public double statistic(int i) {
    return checked(i) ? residual(i) / (observations.get(i).sd() * Math.sqrt(redundancy[i])) : 0;
  }

  /** For every reading the correlation of its test statistic with that of reading {@code i}. */
  double[] correlations(int i) {
    double[] rho = new double[redundancy.length];
    double[] spread = spread(i);
    for (int j = 0; j < rho.length; j++) {
      rho[j] =
          checked(i) && checked(j) && i != j
              ? -along(j, spread) / Math.sqrt(redundancy[i] * redundancy[j])
              : 0;
    }
    rho[i] = 1;
    return rho;
  }

  /** The cofactor of two coordinates; 0 where one is held. */
  public double cofactor(int c, int d) {
    int i = datum.unknown(c);
    int j = datum.unknown(d);
    return i < 0 || j < 0 ? 0 : cofactors[i][j];
  }

  /** The cofactor of a quantity with these slopes. */
  public double cofactor(DesignRow row) {
    double sum = 0;
    for (int a = 0; a < row.size(); a++) {
      for (int b = 0; b < row.size(); b++) {
        sum += row.slope(a) * row.slope(b) * cofactor(row.coordinate(a), row.coordinate(b));
      }
    }
    return sum;
  }

  /** The cofactors of every unknown with reading {@code i}, in units of its sd. */
  private double[] spread(int i) {
    double[] spread = new double[datum.count()];
    double sd = observations.get(i).sd();
    for (int a = 0; a < rows[i].size(); a++) {
      int k = datum.unknown(rows[i].coordinate(a));
      if (k >= 0) {
        double by = rows[i].slope(a) / sd;
        for (int u = 0; u < spread.length; u++) {
          spread[u] += cofactors[u][k] * by;
        }
      }
    }
    return spread;
  }

  private double along(int j, double[] spread) {
    double sum = 0;
    for (int a = 0; a < rows[j].size(); a++) {
      int k = datum.unknown(rows[j].coordinate(a));
      sum += k < 0 ? 0 : rows[j].slope(a) * spread[k];
    }
    return sum / observations.get(j).sd();
  }
}
