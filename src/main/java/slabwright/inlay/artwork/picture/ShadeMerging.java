package slabwright.inlay.artwork.picture;

import slabwright.shape.ints.UnionFind;

/**
 * Brings colours together that pass softly into each other, as paper does in a shadow: where two
 * colours of a drawing meet, the picture changes within a pixel or two; where light fades, it
 * hardly changes at all.
 */
final class ShadeMerging {
  /** How far to each side the change is looked at, in pixels. */
  private static final int REACH = 3;

  /** A share of the difference between both colours; what changes less is soft. */
  private static final double SOFT = 0.4;

  /** A share of the border between two colours that must be soft. */
  private static final double MOSTLY = 0.7;

  private static final int LEAST = 12;

  private final Pixels pixels;
  private final LabelMap map;
  private final int[][] border;
  private final int[][] soft;

  private ShadeMerging(Pixels pixels, LabelMap map) {
    this.pixels = pixels;
    this.map = map;
    int n = map.palette().length;
    this.border = new int[n][n];
    this.soft = new int[n][n];
  }

  /** The map with such colours as one, the most frequent of them. */
  static LabelMap run(Pixels pixels, LabelMap map) {
    ShadeMerging merging = new ShadeMerging(pixels, map);
    for (int y = 0; y < map.height(); y++) {
      for (int x = 0; x < map.width(); x++) {
        merging.look(x, y, 1, 0);
        merging.look(x, y, 0, 1);
      }
    }
    return merging.merged();
  }

  private void look(int x, int y, int dx, int dy) {
    int a = map.at(x, y);
    int b = map.at(x + dx, y + dy);
    if (b == LabelMap.OUTSIDE || a == b) {
      return;
    }
    // the extremes, not the ends: across a thin line both ends are paper
    double here = 1;
    double there = 0;
    for (int k = 0; k <= REACH; k++) {
      here = Math.min(here, share(x - k * dx, y - k * dy, a, b));
      there = Math.max(there, share(x + (k + 1) * dx, y + (k + 1) * dy, a, b));
    }
    int low = Math.min(a, b);
    int high = Math.max(a, b);
    border[low][high]++;
    soft[low][high] += there - here < SOFT ? 1 : 0;
  }

  private double share(int x, int y, int a, int b) {
    int u = Math.max(0, Math.min(pixels.width() - 1, x));
    int v = Math.max(0, Math.min(pixels.height() - 1, y));
    return PixelColour.share(pixels.at(u, v), map.colour(a), map.colour(b));
  }

  private LabelMap merged() {
    int n = map.palette().length;
    UnionFind same = new UnionFind(n);
    for (int a = 0; a < n; a++) {
      for (int b = a + 1; b < n; b++) {
        if (border[a][b] >= LEAST && soft[a][b] >= MOSTLY * border[a][b]) {
          same.join(a, b);
        }
      }
    }
    // the palette is in order of frequency, so the first of a group is its most frequent
    int[] to = new int[n];
    int count = 0;
    int[] palette = new int[n];
    int[] numberOf = new int[n];
    java.util.Arrays.fill(numberOf, -1);
    for (int k = 0; k < n; k++) {
      int root = same.root(k);
      if (numberOf[root] < 0) {
        palette[count] = map.colour(k);
        numberOf[root] = count++;
      }
      to[k] = numberOf[root];
    }
    if (count == n) {
      return map;
    }
    byte[] label = new byte[map.label().length];
    for (int i = 0; i < label.length; i++) {
      label[i] = (byte) to[map.label()[i]];
    }
    return new LabelMap(map.width(), map.height(), label, java.util.Arrays.copyOf(palette, count));
  }
}
