package slabwright.tape.leastsquares;

/** Corners that fit the readings: coordinates in mm and the weighted sum of squared misfits. */
public final class LeastSquaresFit {
  private final double[] xy;
  private final double sumOfSquares;
  private final boolean settled;

  LeastSquaresFit(double[] xy, double sumOfSquares, boolean settled) {
    this.xy = xy;
    this.sumOfSquares = sumOfSquares;
    this.settled = settled;
  }

  public double[] xy() {
    return xy.clone();
  }

  public double sumOfSquares() {
    return sumOfSquares;
  }

  /** False when the steps had not died away within the number allowed. */
  public boolean settled() {
    return settled;
  }

  public LeastSquaresFit better(LeastSquaresFit o) {
    if (settled != o.settled) {
      return settled ? this : o;
    }
    return sumOfSquares <= o.sumOfSquares ? this : o;
  }
}
