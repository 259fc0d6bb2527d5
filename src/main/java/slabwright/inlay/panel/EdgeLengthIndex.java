package slabwright.inlay.panel;

import java.util.Arrays;

/**
 * How much line lies left of a place: answers "length between a and b" for many upright bands over
 * one set of segments in O(log n) each.
 *
 * <p>A slanted segment adds its length evenly over its width; an upright one all at once.
 */
final class EdgeLengthIndex {
  private final double[] at;
  private final double[] length;
  private final double[] slope;
  private final double[] uprightAt;
  private final double[] uprightSum;

  /**
   * @param from lower u of each segment
   * @param to upper u of each segment
   * @param len its length
   */
  EdgeLengthIndex(double[] from, double[] to, double[] len) {
    int n = from.length;
    Step[] steps = new Step[2 * n];
    int used = 0;
    double[][] upright = new double[n][];
    int standing = 0;
    for (int i = 0; i < n; i++) {
      if (to[i] > from[i]) {
        double density = len[i] / (to[i] - from[i]);
        steps[used++] = new Step(from[i], density);
        steps[used++] = new Step(to[i], -density);
      } else {
        upright[standing++] = new double[] {from[i], len[i]};
      }
    }
    at = new double[used];
    length = new double[used];
    slope = new double[used];
    sumSteps(Arrays.copyOf(steps, used));
    uprightAt = new double[standing];
    uprightSum = new double[standing + 1];
    sumUpright(Arrays.copyOf(upright, standing));
  }

  private record Step(double at, double change) {}

  private void sumSteps(Step[] steps) {
    Arrays.sort(steps, (a, b) -> Double.compare(a.at, b.at));
    double sum = 0;
    double rate = 0;
    for (int i = 0; i < steps.length; i++) {
      sum += i == 0 ? 0 : rate * (steps[i].at - steps[i - 1].at);
      rate += steps[i].change;
      at[i] = steps[i].at;
      length[i] = sum;
      slope[i] = rate;
    }
  }

  private void sumUpright(double[][] upright) {
    Arrays.sort(upright, (a, b) -> Double.compare(a[0], b[0]));
    for (int i = 0; i < upright.length; i++) {
      uprightAt[i] = upright[i][0];
      uprightSum[i + 1] = uprightSum[i] + upright[i][1];
    }
  }

  /** Length of line with a ≤ u ≤ b. */
  double between(double a, double b) {
    double slanted = slantedBelow(b) - slantedBelow(a);
    return Math.max(0, slanted) + uprightSum[below(b, true)] - uprightSum[below(a, false)];
  }

  private double slantedBelow(double u) {
    int i = Arrays.binarySearch(at, u);
    int last = i >= 0 ? i : -i - 2;
    return last < 0 ? 0 : length[last] + slope[last] * (u - at[last]);
  }

  /** Number of upright segments at places below {@code u}, or at it too. */
  private int below(double u, boolean orAt) {
    int low = 0;
    int high = uprightAt.length;
    while (low < high) {
      int mid = (low + high) >>> 1;
      if (uprightAt[mid] < u || (orAt && uprightAt[mid] == u)) {
        low = mid + 1;
      } else {
        high = mid;
      }
    }
    return low;
  }
}
