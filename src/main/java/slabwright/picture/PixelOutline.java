package slabwright.picture;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Bounds;
import slabwright.shape.Ring;
import slabwright.shape.SegmentGeometry;
import slabwright.shape.Vec;
import slabwright.shape.fit.Homography;

/**
 * Rings in pixels, x right and y down, as the edges that a row of pixels crosses. All rings of one
 * outline run the same way round their insides, so that the sums of their edges are its coverage.
 */
final class PixelOutline {
  /** Four numbers an edge: x, y of its upper end, then of its lower; and which way it runs. */
  private final double[] ends;

  private final float[] ways;
  private final int count;
  private final Bounds bounds;

  private PixelOutline(List<List<Vec>> rings) {
    int most = rings.stream().mapToInt(List::size).sum();
    ends = new double[4 * most];
    ways = new float[most];
    Bounds all = Bounds.EMPTY;
    int n = 0;
    for (List<Vec> ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        Vec a = ring.get(i);
        Vec b = ring.get((i + 1) % ring.size());
        all = all.including(a);
        if (a.y() != b.y()) {
          Vec top = a.y() < b.y() ? a : b;
          Vec foot = a.y() < b.y() ? b : a;
          ends[4 * n] = top.x();
          ends[4 * n + 1] = top.y();
          ends[4 * n + 2] = foot.x();
          ends[4 * n + 3] = foot.y();
          ways[n++] = a.y() < b.y() ? 1 : -1;
        }
      }
    }
    count = n;
    bounds = all;
  }

  /** Rings of the site as a view shows them; what lies behind the eye is cut off. */
  static PixelOutline of(List<Ring> rings, Homography toPixels, double nearest) {
    List<List<Vec>> out = new ArrayList<>();
    for (Ring r : rings) {
      List<Vec> before = SegmentGeometry.cut(r.points(), p -> toPixels.depth(p) - nearest);
      if (before.size() > 2) {
        out.add(before.stream().map(toPixels::apply).toList());
      }
    }
    return new PixelOutline(out);
  }

  static PixelOutline ofPixels(List<List<Vec>> rings) {
    return new PixelOutline(rings);
  }

  /** Bounds in pixels. */
  Bounds bounds() {
    return bounds;
  }

  /** The first column that it can cover. */
  int left() {
    return (int) Math.max(0, Math.floor(bounds.minX()));
  }

  /** The column after the last that it can cover. */
  int right(int width) {
    return (int) Math.min(width, Math.floor(bounds.maxX()) + 1);
  }

  boolean meets(int top, int rows, int width) {
    return !bounds.isEmpty()
        && bounds.minY() < top + rows
        && bounds.maxY() > top
        && bounds.minX() < width
        && bounds.maxX() > 0;
  }

  /**
   * How much of each pixel it covers, 0 to 1, exactly.
   *
   * @param cover rows × (width + 2), overwritten from {@link #left} to {@link #right} alone, where
   *     it can be anything but 0; the last two of each row are room to work
   */
  void cover(int top, int rows, int width, float[] cover) {
    int pitch = width + 2;
    int left = left();
    int right = right(width);
    for (int row = 0; row < rows && left < right; row++) {
      java.util.Arrays.fill(cover, row * pitch + left, row * pitch + right + 2, 0);
    }
    for (int e = 0; e < count; e++) {
      if (ends[4 * e + 1] < top + rows && ends[4 * e + 3] > top) {
        edge(e, top, rows, width, cover);
      }
    }
    for (int row = 0; row < rows && left < right; row++) {
      float sum = 0;
      for (int x = row * pitch + left; x < row * pitch + right; x++) {
        sum += cover[x];
        float share = sum > 0 ? sum : 0 - sum;
        cover[x] = share < 1 ? share : 1;
      }
      // What an edge left for the pixel after the last is no share of that one.
      java.util.Arrays.fill(cover, row * pitch + right, row * pitch + right + 2, 0);
    }
  }

  private void edge(int e, int top, int rows, int width, float[] cover) {
    double x0 = ends[4 * e];
    double y0 = ends[4 * e + 1];
    double slope = (ends[4 * e + 2] - x0) / (ends[4 * e + 3] - y0);
    int first = (int) Math.max(top, Math.floor(y0));
    int last = (int) Math.min(top + rows - 1.0, Math.ceil(ends[4 * e + 3]) - 1);
    for (int y = first; y <= last; y++) {
      double from = Math.max(y, y0);
      double to = Math.min(y + 1.0, ends[4 * e + 3]);
      double a = clamp(x0 + (from - y0) * slope, width);
      double b = clamp(x0 + (to - y0) * slope, width);
      float share = (float) (to - from) * ways[e];
      spread(cover, (y - top) * (width + 2), Math.min(a, b), Math.max(a, b), share);
    }
  }

  private static double clamp(double x, int width) {
    return Math.max(0, Math.min(width, x));
  }

  /** Shares out what lies right of an edge piece over the pixels of its row that it crosses. */
  private static void spread(float[] cover, int row, double left, double right, float share) {
    int first = (int) left;
    int last = (int) right;
    if (first == last) {
      float away = (float) ((left + right) / 2 - first);
      cover[row + first] += share * (1 - away);
      cover[row + first + 1] += share * away;
      return;
    }
    double perX = 1 / (right - left);
    double before = 0;
    for (int x = first; x <= last; x++) {
      double from = Math.max(left, x);
      double to = Math.min(right, x + 1.0);
      double part = (to - from) * perX;
      double inside = part * (x + 1 - (from + to) / 2);
      cover[row + x] += (float) (share * (before + inside));
      before = part - inside;
    }
    cover[row + last + 1] += (float) (share * before);
  }
}
