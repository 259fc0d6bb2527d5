package slabwright.inlay.panel;

import java.util.List;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** A ring's corners as plain numbers: u across the seams looked at, v along them. */
final class RingCoordinates {
  final double[] u;
  final double[] v;
  final double minU;
  final double maxU;

  RingCoordinates(double[] u, double[] v) {
    this.u = u;
    this.v = v;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double x : u) {
      low = Math.min(low, x);
      high = Math.max(high, x);
    }
    minU = low;
    maxU = high;
  }

  static RingCoordinates of(Ring ring, StripDirection turn) {
    List<Vec> points = ring.points();
    double[] u = new double[points.size()];
    double[] v = new double[points.size()];
    for (int i = 0; i < u.length; i++) {
      u[i] = turn.u(points.get(i));
      v[i] = turn.v(points.get(i));
    }
    return new RingCoordinates(u, v);
  }

  /** The same ring for seams that run the other way. */
  RingCoordinates swapped() {
    return new RingCoordinates(v, u);
  }

  boolean straddles(double line) {
    return minU < line - SeamPlaceSearch.SLACK && line + SeamPlaceSearch.SLACK < maxU;
  }

  /**
   * Runs of the ring beyond a line that reach no farther than {@code depth} from it and come back
   * within {@code span}: each is a bit that a cut along the line leaves hanging on to it alone.
   *
   * @param side 1 for the side of greater u, -1 for the other
   */
  int shallowRuns(double line, int side, double depth, SeamSpan span) {
    if (!straddles(line)) {
      return 0;
    }
    int n = u.length;
    int start = 0;
    while (side * (u[start] - line) > SeamPlaceSearch.SLACK) {
      start++;
    }
    int count = 0;
    double reach = 0;
    boolean inSpan = true;
    for (int k = 1; k <= n; k++) {
      int i = (start + k) % n;
      double beyond = side * (u[i] - line);
      if (beyond > SeamPlaceSearch.SLACK) {
        inSpan = reach == 0 ? span.holds(crossing(i, line)) : inSpan;
        reach = Math.max(reach, beyond);
      } else if (reach > 0) {
        count +=
            reach < depth - SeamPlaceSearch.SLACK && inSpan && span.holds(crossing(i, line))
                ? 1
                : 0;
        reach = 0;
      }
    }
    return count;
  }

  /** Where the segment that ends at corner {@code i} meets the line. */
  private double crossing(int i, double line) {
    int before = (i + u.length - 1) % u.length;
    double t = (line - u[before]) / (u[i] - u[before]);
    return v[before] + t * (v[i] - v[before]);
  }
}
