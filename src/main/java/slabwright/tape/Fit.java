package slabwright.tape;

/** Corners that fit the readings: coordinates in mm and the weighted sum of squared misfits. */
final class Fit {
  private final double[] xy;
  private final double sumOfSquares;
  private final boolean settled;

  Fit(double[] xy, double sumOfSquares, boolean settled) {
    this.xy = xy;
    this.sumOfSquares = sumOfSquares;
    this.settled = settled;
  }

  double[] xy() {
    return xy.clone();
  }

  double sumOfSquares() {
    return sumOfSquares;
  }

  /** False when the steps had not died away within the number allowed. */
  boolean settled() {
    return settled;
  }

  Fit better(Fit o) {
    if (settled != o.settled) {
      return settled ? this : o;
    }
    return sumOfSquares <= o.sumOfSquares ? this : o;
  }
}
