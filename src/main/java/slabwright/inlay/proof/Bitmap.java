package slabwright.inlay.proof;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import slabwright.shape.Bounds;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** A region as square cells, each in or out by its centre: coarse, but quick to ask. */
final class Bitmap {
  final double minX;
  final double minY;
  final double cell;
  final int columns;
  final int rows;
  private final BitSet in;

  private Bitmap(Bounds b, int across) {
    cell = Math.max(b.width(), b.height()) / across;
    minX = b.minX();
    minY = b.minY();
    columns = Math.max(1, (int) Math.ceil(b.width() / cell));
    rows = Math.max(1, (int) Math.ceil(b.height() / cell));
    in = new BitSet(columns * rows);
  }

  /**
   * Fills the rings by the even-odd rule.
   *
   * @param across cells along the longer side of {@code bounds}
   */
  static Bitmap of(List<Ring> rings, Bounds bounds, int across) {
    Bitmap map = new Bitmap(bounds, across);
    double[][] crossings = new double[map.rows][4];
    int[] counts = new int[map.rows];
    for (Ring ring : rings) {
      List<Vec> p = ring.points();
      for (int i = 0; i < p.size(); i++) {
        map.cross(p.get(i), p.get((i + 1) % p.size()), crossings, counts);
      }
    }
    for (int row = 0; row < map.rows; row++) {
      map.fill(row, crossings[row], counts[row]);
    }
    return map;
  }

  private void cross(Vec a, Vec b, double[][] crossings, int[] counts) {
    double low = Math.min(a.y(), b.y());
    double high = Math.max(a.y(), b.y());
    int from = Math.max(0, (int) Math.ceil((low - minY) / cell - 0.5));
    int to = Math.min(rows - 1, (int) Math.ceil((high - minY) / cell - 0.5) - 1);
    for (int row = from; row <= to; row++) {
      double y = minY + (row + 0.5) * cell;
      if (counts[row] == crossings[row].length) {
        crossings[row] = Arrays.copyOf(crossings[row], 2 * counts[row]);
      }
      crossings[row][counts[row]++] = a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y());
    }
  }

  private void fill(int row, double[] x, int count) {
    Arrays.sort(x, 0, count);
    for (int i = 0; i + 1 < count; i += 2) {
      int from = Math.max(0, (int) Math.ceil((x[i] - minX) / cell - 0.5));
      int to = Math.min(columns, (int) Math.ceil((x[i + 1] - minX) / cell - 0.5));
      if (from < to) {
        in.set(row * columns + from, row * columns + to);
      }
    }
  }

  boolean has(double x, double y) {
    int column = (int) Math.floor((x - minX) / cell);
    int row = (int) Math.floor((y - minY) / cell);
    return column >= 0
        && column < columns
        && row >= 0
        && row < rows
        && in.get(row * columns + column);
  }

  boolean cellIn(int column, int row) {
    return in.get(row * columns + column);
  }
}
