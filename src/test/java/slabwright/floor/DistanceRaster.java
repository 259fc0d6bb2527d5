package slabwright.floor;

import java.util.ArrayDeque;
import java.util.Deque;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * A fine raster with exact distances: shares no code with the shape room but the corners of rings.
 * Squared distances within rows, then by the lower envelope of parabolas column by column (P.
 * Felzenszwalb, D. Huttenlocher, "Distance transforms of sampled functions", 2012).
 */
final class DistanceRaster {
  final Bounds bounds;
  final double cell;
  final int width;
  final int height;

  DistanceRaster(Bounds bounds, double cell) {
    this.bounds = bounds;
    this.cell = cell;
    width = (int) Math.ceil(bounds.width() / cell);
    height = (int) Math.ceil(bounds.height() / cell);
  }

  Vec middle(int i) {
    int column = i % width;
    int row = i / width;
    return new Vec(bounds.minX() + (column + 0.5) * cell, bounds.minY() + (row + 0.5) * cell);
  }

  int size() {
    return width * height;
  }

  /** Cells whose middle lies inside, by even-odd scan lines. */
  boolean[] fill(Region region) {
    boolean[] inside = new boolean[size()];
    for (int row = 0; row < height; row++) {
      double y = bounds.minY() + (row + 0.5) * cell;
      for (Ring ring : region.rings()) {
        for (int i = 0; i < ring.points().size(); i++) {
          cross(
              inside,
              row,
              y,
              ring.points().get(i),
              ring.points().get((i + 1) % ring.points().size()));
        }
      }
    }
    return inside;
  }

  private void cross(boolean[] inside, int row, double y, Vec a, Vec b) {
    if (a.y() <= y == b.y() <= y) {
      return;
    }
    double x = a.x() + (y - a.y()) / (b.y() - a.y()) * (b.x() - a.x());
    int from = (int) Math.max(0, Math.ceil((x - bounds.minX()) / cell - 0.5));
    for (int column = from; column < width; column++) {
      inside[row * width + column] ^= true;
    }
  }

  /** Cells that an outline runs through, found by points less than half a cell apart. */
  boolean[] outlineOf(Region region) {
    boolean[] on = new boolean[size()];
    for (Ring ring : region.rings()) {
      for (int i = 0; i < ring.points().size(); i++) {
        Vec a = ring.points().get(i);
        Vec b = ring.points().get((i + 1) % ring.points().size());
        int steps = (int) Math.ceil(a.distanceTo(b) / (0.45 * cell)) + 1;
        for (int k = 0; k <= steps; k++) {
          mark(on, a.plus(b.minus(a).times((double) k / steps)));
        }
      }
    }
    return on;
  }

  private void mark(boolean[] on, Vec at) {
    int column = (int) ((at.x() - bounds.minX()) / cell);
    int row = (int) ((at.y() - bounds.minY()) / cell);
    on[row * width + column] = true;
  }

  /** Distance in mm from each cell's middle to the nearest middle of a marked cell. */
  double[] distanceTo(boolean[] marked) {
    double[] d = new double[size()];
    for (int row = 0; row < height; row++) {
      along(marked, d, row * width);
    }
    for (int column = 0; column < width; column++) {
      envelope(d, column, width, height);
    }
    for (int i = 0; i < d.length; i++) {
      d[i] = Math.sqrt(d[i]) * cell;
    }
    return d;
  }

  /** Squared distances within a row, in cells; very far where nothing in it is marked. */
  private void along(boolean[] marked, double[] d, int start) {
    double far = 1e12;
    double last = Double.NEGATIVE_INFINITY;
    for (int x = 0; x < width; x++) {
      last = marked[start + x] ? x : last;
      d[start + x] = Math.min(far, (x - last) * (x - last));
    }
    last = Double.POSITIVE_INFINITY;
    for (int x = width - 1; x >= 0; x--) {
      last = marked[start + x] ? x : last;
      d[start + x] = Math.min(d[start + x], (last - x) * (last - x));
    }
  }

  private static void envelope(double[] d, int start, int step, int n) {
    int[] at = new int[n];
    double[] from = new double[n + 1];
    double[] f = new double[n];
    for (int i = 0; i < n; i++) {
      f[i] = d[start + i * step];
    }
    int k = 0;
    from[0] = Double.NEGATIVE_INFINITY;
    for (int q = 1; q < n; q++) {
      double s = meet(f, at[k], q);
      while (k > 0 && s <= from[k]) {
        k--;
        s = meet(f, at[k], q);
      }
      k++;
      at[k] = q;
      from[k] = s;
    }
    int count = k;
    k = 0;
    for (int q = 0; q < n; q++) {
      while (k < count && from[k + 1] < q) {
        k++;
      }
      d[start + q * step] = (q - at[k]) * (double) (q - at[k]) + f[at[k]];
    }
  }

  private static double meet(double[] f, int p, int q) {
    return (f[q] + (double) q * q - f[p] - (double) p * p) / (2.0 * (q - p));
  }

  /** The cells of {@code open} that join one of the seeds side by side. */
  boolean[] flood(boolean[] open, boolean[] seeds) {
    boolean[] reached = new boolean[size()];
    Deque<Integer> todo = new ArrayDeque<>();
    for (int i = 0; i < size(); i++) {
      if (open[i] && seeds[i]) {
        reached[i] = true;
        todo.add(i);
      }
    }
    while (!todo.isEmpty()) {
      int i = todo.remove();
      int x = i % width;
      int[] next = {x > 0 ? i - 1 : i, x < width - 1 ? i + 1 : i, i - width, i + width};
      for (int j : next) {
        if (j >= 0 && j < size() && open[j] && !reached[j]) {
          reached[j] = true;
          todo.add(j);
        }
      }
    }
    return reached;
  }
}
