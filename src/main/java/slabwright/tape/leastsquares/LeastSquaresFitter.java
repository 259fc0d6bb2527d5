package slabwright.tape.leastsquares;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * Weighted least squares on corner coordinates: Gauss–Newton steps, damped by Levenberg's and
 * Marquardt's rule where a full step would not lower the sum, so that a bad start comes home.
 */
public final class LeastSquaresFitter {
  private static final int MOST_STEPS = 100;

  /** Residuals up to twice the stated errors: no gross error is left. */
  private static final double GOOD = 4;

  private static final double MOST_DAMPING = 1e6;

  /** A start from which the room heals is nearly there by then. */
  private static final int TRIAL = 10;

  private final Datum datum;
  private final List<Observation> observations;
  private final BooleanSupplier cancelled;

  private double damping;
  private boolean settled;

  public LeastSquaresFitter(
      Datum datum, List<Observation> observations, BooleanSupplier cancelled) {
    this.datum = datum;
    this.observations = observations;
    this.cancelled = cancelled;
  }

  /**
   * The corners near {@code start} that fit best.
   *
   * @throws CancellationException when cancelled on the way
   */
  public LeastSquaresFit from(double[] start) {
    return from(start, MOST_STEPS, Double.POSITIVE_INFINITY);
  }

  /**
   * The same with fewer steps, for trials.
   *
   * @param hopeless a sum of squares that a trial worth going on with is below after ten steps
   */
  LeastSquaresFit from(double[] start, int mostSteps, double hopeless) {
    double[] xy = start.clone();
    double sum = sum(xy);
    damping = 1e-3;
    settled = false;
    for (int k = 0; k < mostSteps && !settled && (k < TRIAL || sum <= hopeless); k++) {
      if (cancelled.getAsBoolean()) {
        throw new CancellationException("the adjustment was cancelled");
      }
      xy = improve(xy, sum);
      sum = sum(xy);
    }
    return new LeastSquaresFit(xy, sum, settled);
  }

  /** Whether the corners fit as well as readings with the stated errors would. */
  public boolean good(LeastSquaresFit fit) {
    int redundancy = Math.max(1, observations.size() - datum.count());
    return fit.settled() && fit.sumOfSquares() <= GOOD * redundancy;
  }

  /** One step downhill; the same corners, and settled, where no step goes down any more. */
  private double[] improve(double[] xy, double sum) {
    NormalEquations normals = new NormalEquations(xy, datum, observations);
    double ease = 30;
    while (damping <= MOST_DAMPING) {
      Optional<double[]> step = normals.step(damping);
      if (step.isPresent()) {
        double[] next = moved(xy, step.get());
        double nextSum = sum(next);
        if (nextSum <= sum) {
          settled = largest(step.get()) < 1e-10 * extent(xy) || sum - nextSum <= 1e-11 * sum;
          damping = Math.max(damping / ease, 1e-11);
          return next;
        }
        if (largest(step.get()) < 1e-9 * extent(xy)) {
          break;
        }
      }
      damping *= 10;
      ease = 1;
    }
    settled = true;
    return xy;
  }

  private double[] moved(double[] xy, double[] step) {
    double[] next = xy.clone();
    for (int c = 0; c < next.length; c++) {
      int i = datum.unknown(c);
      next[c] += i < 0 ? 0 : step[i];
    }
    return next;
  }

  private double sum(double[] xy) {
    double sum = 0;
    for (Observation o : observations) {
      double v = o.misfit(xy) / o.sd();
      sum += v * v;
    }
    return sum;
  }

  private static double largest(double[] step) {
    double most = 0;
    for (double s : step) {
      most = Math.max(most, Math.abs(s));
    }
    return most;
  }

  private static double extent(double[] xy) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double c : xy) {
      low = Math.min(low, c);
      high = Math.max(high, c);
    }
    return high - low;
  }
}
