package slabwright.inlay.artwork.picture;

import java.util.Arrays;
import slabwright.shape.ints.IntList;

/**
 * Gives each pixel its colour. A pixel on an edge may be nearest to a third colour that only looks
 * like the mixture of the two on its sides; it goes to the side that it holds more of.
 */
final class PixelLabeller {
  /** How far around an edge its two sides are looked for, in pixels. */
  private static final int REACH = 2;

  /** A pixel counts as lying inside its colour when so many of the nine around it have it. */
  private static final int INSIDE = 6;

  /** Brightness steps (squared) that a mixture may be off and still be believed. */
  private static final double BELIEVED = 18 * 18;

  /** Pixels of a spot that may be nothing but the edge of a thin line. */
  private static final int SMALL = 14;

  /** Brightness steps (squared) within which a pixel has a colour unmixed. */
  private static final double PURE = 30 * 30;

  private final Pixels pixels;
  private final int[] palette;
  private final byte[] label;
  private final boolean[] inside;
  private final boolean[] small;

  private PixelLabeller(Pixels pixels, int[] palette) {
    this.pixels = pixels;
    this.palette = palette;
    this.label = new byte[pixels.count()];
    this.inside = new boolean[pixels.count()];
    this.small = new boolean[pixels.count()];
  }

  static LabelMap label(Pixels pixels, int[] palette) {
    PixelLabeller labeller = new PixelLabeller(pixels, palette);
    labeller.nearest();
    if (palette.length > 2) {
      labeller.markInside();
      labeller.markSmall();
      labeller.unmix();
    }
    return new LabelMap(pixels.width(), pixels.height(), labeller.label, palette);
  }

  private void nearest() {
    byte[] known = new byte[1 << 18];
    Arrays.fill(known, (byte) -1);
    int[] rgb = pixels.rgb();
    boolean two = palette.length == 2;
    for (int i = 0; i < rgb.length; i++) {
      if (two) {
        label[i] = (byte) (PixelColour.share(rgb[i], palette[0], palette[1]) >= 0.5 ? 1 : 0);
      } else {
        int cell = ColourHistogram.cell(rgb[i]);
        if (known[cell] < 0) {
          known[cell] = (byte) nearest(rgb[i]);
        }
        label[i] = known[cell];
      }
    }
  }

  private int nearest(int c) {
    int best = 0;
    for (int k = 1; k < palette.length; k++) {
      if (PixelColour.distance(c, palette[k]) < PixelColour.distance(c, palette[best])) {
        best = k;
      }
    }
    return best;
  }

  private void markInside() {
    int w = pixels.width();
    int h = pixels.height();
    for (int y = 0; y < h; y++) {
      for (int x = 0; x < w; x++) {
        int same = 0;
        int mine = label[y * w + x];
        for (int v = Math.max(0, y - 1); v <= Math.min(h - 1, y + 1); v++) {
          for (int u = Math.max(0, x - 1); u <= Math.min(w - 1, x + 1); u++) {
            same += label[v * w + u] == mine ? 1 : 0;
          }
        }
        boolean rim = x == 0 || y == 0 || x == w - 1 || y == h - 1;
        inside[y * w + x] = same >= (rim ? INSIDE - 2 : INSIDE + 1);
      }
    }
  }

  /** Marks spots of one colour that are small and hold no pixel inside. */
  private void markSmall() {
    boolean[] seen = new boolean[label.length];
    IntList spot = new IntList();
    for (int i = 0; i < label.length; i++) {
      if (!seen[i] && !inside[i]) {
        spot.clear();
        boolean thin = gather(i, seen, spot);
        for (int k = 0; thin && k < spot.size(); k++) {
          small[spot.get(k)] = true;
        }
      }
    }
  }

  /** Gathers the thin pixels of a spot; false when there are many, or one beside them is inside. */
  private boolean gather(int start, boolean[] seen, IntList spot) {
    int w = pixels.width();
    boolean thin = true;
    seen[start] = true;
    spot.add(start);
    for (int k = 0; k < spot.size(); k++) {
      int i = spot.get(k);
      for (int d = 0; d < 4; d++) {
        int x = i % w + PixelEdge.dx(d);
        int j = i + PixelEdge.dx(d) + PixelEdge.dy(d) * w;
        if (x >= 0 && x < w && j >= 0 && j < label.length && label[j] == label[start]) {
          thin &= !inside[j];
          if (!seen[j] && !inside[j]) {
            seen[j] = true;
            spot.add(j);
          }
        }
      }
    }
    return thin && spot.size() <= SMALL;
  }

  private void unmix() {
    byte[] old = label.clone();
    int w = pixels.width();
    for (int y = 0; y < pixels.height(); y++) {
      for (int x = 0; x < w; x++) {
        if (!inside[y * w + x]) {
          label[y * w + x] = (byte) unmixed(x, y, old);
        }
      }
    }
  }

  private boolean isPure(int c, int k) {
    return PixelColour.distance(c, palette[k]) < PURE;
  }

  /** The label of a pixel that lies inside nothing: the larger share of the best mixture around. */
  private int unmixed(int x, int y, byte[] old) {
    int w = pixels.width();
    int mine = old[y * w + x];
    boolean[] near = new boolean[palette.length];
    int kinds = 0;
    for (int v = Math.max(0, y - REACH); v <= Math.min(pixels.height() - 1, y + REACH); v++) {
      for (int u = Math.max(0, x - REACH); u <= Math.min(w - 1, x + REACH); u++) {
        int k = old[v * w + u];
        boolean beside = Math.max(Math.abs(u - x), Math.abs(v - y)) == 1;
        boolean told = small[y * w + x] && k != mine && (beside || isPure(pixels.at(u, v), k));
        boolean counts = inside[v * w + u] || told;
        if (counts && !near[k]) {
          near[k] = true;
          kinds++;
        }
      }
    }
    if (kinds < 2 || near[mine]) {
      return mine;
    }
    int c = pixels.at(x, y);
    double best = BELIEVED;
    int label = mine;
    for (int a = 0; a < near.length; a++) {
      for (int b = a + 1; b < near.length; b++) {
        if (near[a] && near[b]) {
          double off = PixelColour.offMixture(c, palette[a], palette[b]);
          if (off < best) {
            best = off;
            label = PixelColour.share(c, palette[a], palette[b]) >= 0.5 ? b : a;
          }
        }
      }
    }
    return label;
  }
}
