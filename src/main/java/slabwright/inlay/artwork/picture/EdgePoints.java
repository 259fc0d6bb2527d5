package slabwright.inlay.artwork.picture;

/**
 * Places that an edge goes through, in the order of its chain, in pixels from the picture's top
 * left corner.
 *
 * @param s way along the edge to each, the straight way from one to the next
 * @param doubt how far each may be off because another edge is near, in pixels
 * @param closed whether the last is followed by the first
 */
@SuppressWarnings("ArrayRecordComponent")
record EdgePoints(double[] x, double[] y, double[] s, double[] doubt, boolean closed) {
  private static final double LEAST = 0.05;

  static EdgePoints of(double[] x, double[] y, double[] doubt, boolean closed) {
    return new EdgePoints(x, y, ways(x, y), doubt, closed);
  }

  /** The way along points to each of them; no two stand at one place. */
  static double[] ways(double[] x, double[] y) {
    double[] s = new double[x.length];
    for (int i = 1; i < x.length; i++) {
      s[i] = s[i - 1] + Math.max(LEAST, Math.hypot(x[i] - x[i - 1], y[i] - y[i - 1]));
    }
    return s;
  }

  int size() {
    return x.length;
  }
}
