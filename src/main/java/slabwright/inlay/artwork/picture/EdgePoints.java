package slabwright.inlay.artwork.picture;

/**
 * Places that an edge goes through, in the order of its chain, in pixels from the picture's top
 * left corner.
 *
 * @param s way along the edge to each, the straight way from one to the next
 * @param closed whether the last is followed by the first
 */
@SuppressWarnings("ArrayRecordComponent")
record EdgePoints(double[] x, double[] y, double[] s, boolean closed) {
  static EdgePoints of(double[] x, double[] y, boolean closed) {
    double[] s = new double[x.length];
    for (int i = 1; i < x.length; i++) {
      s[i] = s[i - 1] + Math.hypot(x[i] - x[i - 1], y[i] - y[i - 1]);
    }
    return new EdgePoints(x, y, s, closed);
  }

  int size() {
    return x.length;
  }

  double length() {
    int n = x.length - 1;
    return n < 0 ? 0 : s[n] + (closed ? Math.hypot(x[0] - x[n], y[0] - y[n]) : 0);
  }
}
