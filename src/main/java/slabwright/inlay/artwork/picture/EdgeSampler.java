package slabwright.inlay.artwork.picture;

import java.util.Arrays;

/**
 * Where an edge lies within its pixels: how much of each pixel of a row (or column) across the edge
 * is covered by the colour on one side, added up. For a straight edge that is exact whatever its
 * slant, and whatever even blur the picture has; no threshold is involved.
 */
final class EdgeSampler {
  /** How far to each side of the edge coverage is added up, in pixels. */
  private static final int REACH = 2;

  /** A line as thin as this has no pixel that it fills: both its edges are placed together. */
  private static final int THIN = 2;

  /** Coverage further off than this tells of another edge, not of this one. */
  private static final double FARTHEST = 1.6;

  /** How far an edge may be off beside a colour one, two… pixels wide: measured on our bench. */
  private static final double[] DOUBT = {0.6, 0.4, 0.2, 0.08};

  /** So many pixels beyond the edge show the light there. */
  private static final int LIT = 3;

  /** Brightness steps (squared) from the palette that are another light, not noise. */
  private static final double OTHER_LIGHT = 64;

  private final Pixels pixels;
  private final LabelMap map;

  EdgeSampler(Pixels pixels, LabelMap map) {
    this.pixels = pixels;
    this.map = map;
  }

  EdgePoints sample(BoundaryChain chain) {
    double[] x = new double[chain.steps()];
    double[] y = new double[chain.steps()];
    double[] doubt = new double[chain.steps()];
    int n = 0;
    for (int i = 0; i < chain.steps(); i++) {
      int d = chain.direction(i);
      boolean upright = d == PixelEdge.UP || d == PixelEdge.DOWN;
      int cx = Math.min(chain.x()[i], chain.x()[i + 1]);
      int cy = Math.min(chain.y()[i], chain.y()[i + 1]);
      if (isAcross(cx, cy, upright)) {
        Profile profile = new Profile(cx, cy, upright);
        double off = profile.place();
        doubt[n] = profile.doubt();
        if (Math.abs(off) < FARTHEST) {
          x[n] = upright ? cx + off : cx + 0.5;
          y[n] = upright ? cy + 0.5 : cy + off;
          n++;
        }
      }
    }
    if (n < 3) {
      return middles(chain);
    }
    return EdgePoints.of(
        Arrays.copyOf(x, n), Arrays.copyOf(y, n), Arrays.copyOf(doubt, n), chain.closed());
  }

  private static EdgePoints middles(BoundaryChain chain) {
    double[] x = new double[chain.steps()];
    double[] y = new double[chain.steps()];
    for (int i = 0; i < x.length; i++) {
      x[i] = (chain.x()[i] + chain.x()[i + 1]) / 2.0;
      y[i] = (chain.y()[i] + chain.y()[i + 1]) / 2.0;
    }
    double[] doubt = new double[x.length];
    Arrays.fill(doubt, DOUBT[0]);
    return EdgePoints.of(x, y, doubt, chain.closed());
  }

  /** Whether the picture changes more across this step than along it. */
  private boolean isAcross(int x, int y, boolean upright) {
    int a = upright ? map.at(x - 1, y) : map.at(x, y - 1);
    int b = map.at(x, y);
    int from = map.colour(a);
    int to = map.colour(b);
    double across = 0;
    double along = 0;
    for (int k = -1; k <= 1; k++) {
      int weight = k == 0 ? 2 : 1;
      double near = upright ? share(x - 1, y + k, from, to) : share(x + k, y - 1, from, to);
      double far = upright ? share(x, y + k, from, to) : share(x + k, y, from, to);
      across += weight * (far - near);
      along += k * (near + far);
    }
    return Math.abs(across) >= Math.abs(along);
  }

  private double share(int x, int y, int from, int to) {
    int u = Math.max(0, Math.min(pixels.width() - 1, x));
    int v = Math.max(0, Math.min(pixels.height() - 1, y));
    return Math.max(0, Math.min(1, PixelColour.share(pixels.at(u, v), from, to)));
  }

  /** A row or column of pixels across one step of the grid. */
  private final class Profile {
    private final int x;
    private final int y;
    private final int dx;
    private final int dy;
    private final int before;
    private final int after;
    private final int from;
    private final int to;

    Profile(int x, int y, boolean upright) {
      this.x = x;
      this.y = y;
      this.dx = upright ? 1 : 0;
      this.dy = upright ? 0 : 1;
      this.before = label(-1);
      this.after = label(0);
      this.from = colour(before, -1 - REACH, -1);
      this.to = colour(after, REACH, 1);
    }

    /**
     * The colour on one side: that of the palette, unless the pixels further on there all have it
     * in another light.
     */
    private int colour(int label, int start, int step) {
      int palette = map.colour(label);
      double r = 0;
      double g = 0;
      double b = 0;
      for (int k = 0; k < LIT; k++) {
        int at = start + k * step;
        if (label(at) != label || run(at, -step, label) <= REACH) {
          return palette;
        }
        int c = pixels.at(x + at * dx, y + at * dy);
        r += PixelColour.red(c);
        g += PixelColour.green(c);
        b += PixelColour.blue(c);
      }
      int lit = PixelColour.packed(r / LIT, g / LIT, b / LIT);
      return PixelColour.distance(lit, palette) > OTHER_LIGHT ? lit : palette;
    }

    /** Label of the pixel {@code k} steps on; 0 is the first behind the edge. */
    private int label(int k) {
      return map.at(x + k * dx, y + k * dy);
    }

    /** How much of the pixel is of the colour behind the edge. */
    private double share(int k) {
      int c = pixels.at(x + k * dx, y + k * dy);
      double s = PixelColour.share(c, from, to);
      return Math.max(-0.3, Math.min(1.3, s));
    }

    double doubt() {
      return DOUBT[Math.min(DOUBT.length, Math.min(run(0, 1, after), run(-1, -1, before))) - 1];
    }

    /** How far behind the grid line the edge lies. */
    double place() {
      int ahead = run(0, 1, after);
      int behind = run(-1, -1, before);
      if (ahead <= THIN && label(ahead) == before) {
        return thin(0, ahead, 1);
      }
      if (behind <= THIN && label(-1 - behind) == after) {
        return thin(-behind, 0, -1);
      }
      double off = 0;
      for (int k = 0; k < Math.min(REACH, ahead); k++) {
        off += weight(k, ahead) * (1 - share(k));
      }
      for (int k = 0; k < Math.min(REACH, behind); k++) {
        off -= weight(k, behind) * share(-1 - k);
      }
      return off;
    }

    /** Pixels of one colour from a pixel on, at most twice the reach. */
    private int run(int from, int step, int label) {
      int n = 0;
      while (n < 2 * REACH && label(from + n * step) == label) {
        n++;
      }
      return n;
    }

    /** What stands beyond the middle of a short run belongs to its other edge. */
    private double weight(int k, int run) {
      return run >= 2 * REACH ? 1 : Math.max(0, Math.min(1, run / 2.0 - k));
    }

    /**
     * A line with pixels {@code from} to {@code to} of its own: as wide as it covers, about the
     * middle of what it covers.
     *
     * @param side 1 for its first edge, -1 for its last
     */
    private double thin(int from, int to, int side) {
      double width = 0;
      double moment = 0;
      for (int k = from - 1; k <= to; k++) {
        if (label(k) == LabelMap.OUTSIDE) {
          continue;
        }
        double mine = side > 0 ? share(k) : 1 - share(k);
        double covered = Math.max(0, Math.min(1, mine));
        width += covered;
        moment += covered * (k + 0.5);
      }
      return width > 0 ? moment / width - side * width / 2 : 0;
    }
  }
}
