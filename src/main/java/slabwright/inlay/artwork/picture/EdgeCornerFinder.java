package slabwright.inlay.artwork.picture;

import slabwright.shape.ints.IntList;

/**
 * Corners of an edge: where it turns all at once. The turn between the short straight pieces before
 * and behind a corner fades within the length of a piece; along a curve it stays.
 */
final class EdgeCornerFinder {
  /** Points nearer than this to a corner hold some of both its sides, in pixels. */
  static final double BLURRED = 0.6;

  private static final int MOST_POINTS = 32;
  private static final double PIECE = 2;

  /** Points on the two sides of one corner are at most so far apart. */
  private static final double BESIDE = 2.3;

  private static final double LONGEST_PIECE = 7;
  private static final double PIECE_FOR_NOISE = 20;
  private static final double SHARPEST_LOST = Math.toRadians(24);
  private static final double FADED = 0.62;

  private final EdgePoints points;
  private final double piece;
  private final double least;

  /**
   * @param noise how far points stray from a smooth edge, in pixels
   * @param roundness 0 keeps all corners, 1 none
   */
  EdgeCornerFinder(EdgePoints points, double noise, double roundness) {
    this.points = points;
    this.piece = Math.min(LONGEST_PIECE, PIECE + PIECE_FOR_NOISE * noise);
    this.least = SHARPEST_LOST + roundness * (Math.PI - SHARPEST_LOST);
  }

  /** Numbers of the points nearest to corners, rising. */
  int[] find() {
    int n = points.size();
    double[] turn = new double[n];
    for (int i = 0; i < n; i++) {
      turn[i] = turn(i);
    }
    IntList found = new IntList();
    for (int i = 0; i < n; i++) {
      if (turn[i] >= least && isPeak(turn, i)) {
        found.add(i);
      }
    }
    return found.toArray();
  }

  /** The largest turn around, of equal ones the first; and faded a piece further on both sides. */
  private boolean isPeak(double[] turn, int i) {
    double before = 0;
    double behind = 0;
    for (int step = -1; step <= 1; step += 2) {
      double way = 0;
      double far = turn[i];
      for (int k = 1; k < points.size(); k++) {
        int j = index(i + step * k);
        way = j < 0 ? Double.MAX_VALUE : way + gap(i + step * k, i + step * (k - 1));
        if (way > Math.max(piece, BESIDE)) {
          break;
        }
        if (way <= Math.max(piece / 2, BESIDE)
            && (turn[j] > turn[i] || (turn[j] == turn[i] && step < 0))) {
          return false;
        }
        far = turn[j];
      }
      if (step < 0) {
        before = far;
      } else {
        behind = far;
      }
    }
    return Math.min(before, behind) <= FADED * turn[i] && (before + behind) / 2 <= FADED * turn[i];
  }

  private int index(int i) {
    int n = points.size();
    return points.closed() ? Math.floorMod(i, n) : i < 0 || i >= n ? -1 : i;
  }

  private double gap(int i, int j) {
    int p = index(i);
    int q = index(j);
    return p < 0 || q < 0
        ? 0
        : Math.hypot(points.x()[p] - points.x()[q], points.y()[p] - points.y()[q]);
  }

  /** The angle between the pieces before and behind a point; 0 where there is none. */
  private double turn(int i) {
    double[] back = direction(i, -1);
    double[] ahead = direction(i, 1);
    if (back.length == 0 || ahead.length == 0) {
      return 0;
    }
    double cross = -back[0] * ahead[1] + back[1] * ahead[0];
    double dot = -back[0] * ahead[0] - back[1] * ahead[1];
    return Math.abs(Math.atan2(cross, dot));
  }

  /** The direction away from a point along the piece on one side of it. */
  private double[] direction(int i, int step) {
    double[] x = new double[MOST_POINTS];
    double[] y = new double[MOST_POINTS];
    int n = 0;
    double way = 0;
    for (int k = 1; k < points.size() && n < MOST_POINTS; k++) {
      int j = index(i + step * k);
      if (j < 0) {
        break;
      }
      way += gap(i + step * k, i + step * (k - 1));
      if (way > piece + BLURRED && n >= 2) {
        break;
      }
      if (way >= BLURRED) {
        x[n] = points.x()[j];
        y[n] = points.y()[j];
        n++;
      }
    }
    if (n < 2) {
      return new double[0];
    }
    EdgeLine line = EdgeLine.of(x, y, 0, n);
    return new double[] {line.along().x(), line.along().y()};
  }
}
