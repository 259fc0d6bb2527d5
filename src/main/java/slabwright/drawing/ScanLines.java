package slabwright.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * Where level lines cross what rings enclose by the even-odd rule: row {@code k} lies at {@code y =
 * pitch * k + shift}, and is a list of x values, in and out by turns.
 */
final class ScanLines {
  private final int low;
  private final double[][] crossings;

  private ScanLines(int low, double[][] crossings) {
    this.low = low;
    this.crossings = crossings;
  }

  /** Rows {@code low} to {@code high}, at {@code y = pitch * k + shift}. */
  static ScanLines of(List<Ring> rings, double pitch, double shift, int low, int high) {
    List<List<Double>> rows = new ArrayList<>();
    for (int k = low; k <= high; k++) {
      rows.add(new ArrayList<>());
    }
    for (Ring ring : rings) {
      List<Vec> points = ring.points();
      for (int i = 0; i < points.size(); i++) {
        cross(rows, points.get(i), points.get((i + 1) % points.size()), pitch, shift, low);
      }
    }
    double[][] sorted = new double[rows.size()][];
    for (int i = 0; i < sorted.length; i++) {
      sorted[i] = rows.get(i).stream().mapToDouble(Double::doubleValue).sorted().toArray();
    }
    return new ScanLines(low, sorted);
  }

  /** Adds the edge's crossings; its lower end counts and its upper end does not. */
  private static void cross(
      List<List<Double>> rows, Vec a, Vec b, double pitch, double shift, int low) {
    Vec bottom = a.y() <= b.y() ? a : b;
    Vec top = bottom.equals(a) ? b : a;
    double first = Math.max(low, Math.ceil((bottom.y() - shift) / pitch));
    double last = Math.min(low + rows.size() - 1.0, Math.ceil((top.y() - shift) / pitch) - 1);
    for (int k = (int) first; k <= last; k++) {
      double t = (pitch * k + shift - bottom.y()) / (top.y() - bottom.y());
      rows.get(k - low).add(bottom.x() + (top.x() - bottom.x()) * t);
    }
  }

  /** The x values of row {@code k}, sorted; inside lies between the first and second, and so on. */
  double[] row(int k) {
    return crossings[k - low];
  }

  /** Whether the whole stretch from x0 to x1 of row {@code k} lies inside. */
  boolean holds(int k, double x0, double x1) {
    double[] row = row(k);
    int before = below(row, x0);
    return before % 2 == 1 && before == below(row, x1);
  }

  private static int below(double[] row, double x) {
    int at = Arrays.binarySearch(row, x);
    return at < 0 ? -at - 1 : at;
  }
}
