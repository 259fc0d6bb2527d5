package slabwright.inlay.panel;

/** A stretch along a seam, from {@code low} to {@code high}. */
record SeamSpan(double low, double high) {
  static final SeamSpan ALL = new SeamSpan(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

  boolean holds(double v) {
    return low <= v && v <= high;
  }

  /**
   * The parts 0 to 1 of a segment from {@code a} to {@code b} that lie in this stretch, as {from,
   * to}; {@code from > to} when none does.
   */
  double[] part(double a, double b) {
    if (a == b) {
      return holds(a) ? new double[] {0, 1} : new double[] {1, 0};
    }
    double s = (low - a) / (b - a);
    double t = (high - a) / (b - a);
    return new double[] {Math.max(0, Math.min(s, t)), Math.min(1, Math.max(s, t))};
  }
}
