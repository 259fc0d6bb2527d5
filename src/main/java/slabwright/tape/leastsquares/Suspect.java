package slabwright.tape.leastsquares;

import java.util.List;

/**
 * The reading that fits the others worst.
 *
 * @param reading its place in the list of observations
 * @param fits the value that the other readings give it
 * @param statistic its standardised residual
 * @param redundancy its redundancy number
 * @param rivals readings whose misreading would look the same: correlated by first-order theory, or
 *     healing the room as well when left out instead
 * @param margin how much worse, in sums of squares, the room fits without any other reading; a
 *     large error bends the room so far that this can tell what first order cannot
 * @param without the corners when it is left out
 */
public record Suspect(
    int reading,
    double fits,
    double statistic,
    double redundancy,
    List<Integer> rivals,
    double margin,
    LeastSquaresFit without) {
  /** A blunder is tellable from this redundancy number on, when it has no rival. */
  static final double LEAST_REDUNDANCY = 0.3;

  /** Test statistics correlated above this cannot be told apart. */
  static final double MOST_CORRELATION = 0.9;

  /** Standardised residuals beyond this are suspect: Baarda's value for a risk of 0.1 %. */
  static final double CRITICAL = 3.29;

  /** Sums of squares closer than this tell nothing: {@link #CRITICAL} squared. */
  static final double SAME = CRITICAL * CRITICAL;

  /** Ten standard deviations between the best explanation and the next. */
  private static final double CLEAR_MARGIN = 100;

  private static final double LEAST_FOR_LIKELY = 0.01;

  /** The same suspect, with the value that the room as adjusted in the end gives it. */
  public Suspect fitting(double value) {
    return new Suspect(reading, value, statistic, redundancy, rivals, margin, without);
  }

  /** By the definition: checked well enough, and unlike any other. */
  public boolean tellable() {
    return redundancy >= LEAST_REDUNDANCY && rivals.isEmpty();
  }

  /** Not tellable by the definition, and yet no other reading explains the room nearly as well. */
  public boolean likely() {
    return !tellable() && redundancy >= LEAST_FOR_LIKELY && margin > CLEAR_MARGIN;
  }
}
