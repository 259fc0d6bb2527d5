package slabwright.inlay.artwork.picture;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import slabwright.shape.Vec;

/**
 * What a tracer is measured against: the contour at the half-grey threshold between each colour and
 * the next one to it, going straight between the middles of pixels, simplified and smoothed.
 */
final class PlainContour {
  /** Brought down to this, in pixels, then its corners cut by at most as much. */
  private static final double SIMPLIFIED = 0.3;

  private static final int ROUNDS = 2;

  /** Not quite a half, so that no contour goes right through the middle of a pixel. */
  private static final double HALF = 0.500001;

  private final Pixels pixels;
  private final int[] palette;
  private final int mine;
  private final Map<Vec, Vec> follows = new HashMap<>();

  private PlainContour(Pixels pixels, int[] palette, int mine) {
    this.pixels = pixels;
    this.palette = palette;
    this.mine = mine;
  }

  static List<Shape> trace(Pixels pixels, int[] palette) {
    List<Shape> paths = new ArrayList<>();
    for (int k = 0; k < palette.length; k++) {
      Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
      for (List<Vec> ring : new PlainContour(pixels, palette, k).rings()) {
        append(smoothed(simplified(ring)), path);
      }
      paths.add(path);
    }
    return paths;
  }

  /** 0 in another colour, 1 in this one, one half where both are as far. */
  private double level(int x, int y) {
    int u = Math.max(0, Math.min(pixels.width() - 1, x));
    int v = Math.max(0, Math.min(pixels.height() - 1, y));
    int c = pixels.at(u, v);
    double other = Double.MAX_VALUE;
    for (int k = 0; k < palette.length; k++) {
      if (k != mine) {
        other = Math.min(other, PixelColour.distance(c, palette[k]));
      }
    }
    double own = Math.sqrt(PixelColour.distance(c, palette[mine]));
    double sum = own + Math.sqrt(other);
    return sum == 0 ? 0.5 : Math.sqrt(other) / sum;
  }

  /** Marching squares. */
  private List<List<Vec>> rings() {
    for (int y = -1; y < pixels.height(); y++) {
      for (int x = -1; x < pixels.width(); x++) {
        square(x, y);
      }
    }
    List<List<Vec>> rings = new ArrayList<>();
    while (!follows.isEmpty()) {
      List<Vec> ring = new ArrayList<>();
      Vec at = follows.keySet().iterator().next();
      while (at != null) {
        ring.add(at);
        at = follows.remove(at);
      }
      ring.remove(ring.size() - 1);
      if (ring.size() > 3) {
        rings.add(ring);
      }
    }
    return rings;
  }

  private void square(int x, int y) {
    int[] cx = {x, x + 1, x + 1, x};
    int[] cy = {y, y, y + 1, y + 1};
    List<Vec> in = new ArrayList<>();
    List<Vec> out = new ArrayList<>();
    double[] l = new double[4];
    for (int i = 0; i < 4; i++) {
      l[i] = level(cx[i], cy[i]);
    }
    for (int i = 0; i < 4; i++) {
      int j = (i + 1) % 4;
      if (l[i] >= HALF != l[j] >= HALF) {
        // reckoned the same way from both squares that share the side
        int a = i >= 2 ? j : i;
        int b = i >= 2 ? i : j;
        double f = (HALF - l[a]) / (l[b] - l[a]);
        Vec p =
            new Vec(
                cx[a] + 0.5 + Math.rint(1e7 * f * (cx[b] - cx[a])) / 1e7,
                cy[a] + 0.5 + Math.rint(1e7 * f * (cy[b] - cy[a])) / 1e7);
        (l[j] >= HALF ? in : out).add(p);
      }
    }
    for (int i = 0; i < in.size(); i++) {
      follows.put(in.get(i), out.get(i));
    }
  }

  private static List<Vec> simplified(List<Vec> ring) {
    int n = ring.size();
    if (n < 8) {
      return ring;
    }
    List<Vec> out = new ArrayList<>(part(ring.subList(0, n / 2 + 1)));
    out.remove(out.size() - 1);
    List<Vec> rest = new ArrayList<>(ring.subList(n / 2, n));
    rest.add(ring.get(0));
    out.addAll(part(rest));
    out.remove(out.size() - 1);
    return out;
  }

  private static List<Vec> part(List<Vec> line) {
    Vec a = line.get(0);
    Vec b = line.get(line.size() - 1);
    int far = -1;
    double most = SIMPLIFIED;
    for (int i = 1; i + 1 < line.size(); i++) {
      Vec w = b.minus(a);
      double t = Math.max(0, Math.min(1, line.get(i).minus(a).dot(w) / w.dot(w)));
      double d = line.get(i).distanceTo(a.towards(b, t));
      if (d > most) {
        most = d;
        far = i;
      }
    }
    if (far < 0) {
      return List.of(a, b);
    }
    List<Vec> out = new ArrayList<>(part(line.subList(0, far + 1)));
    out.remove(out.size() - 1);
    out.addAll(part(line.subList(far, line.size())));
    return out;
  }

  private static List<Vec> smoothed(List<Vec> ring) {
    List<Vec> now = ring;
    for (int round = 0; round < ROUNDS; round++) {
      List<Vec> cut = new ArrayList<>();
      for (int i = 0; i < now.size(); i++) {
        Vec p = now.get(i);
        Vec q = now.get((i + 1) % now.size());
        double f = Math.min(0.25, SIMPLIFIED / Math.max(1e-9, p.distanceTo(q)));
        cut.add(p.towards(q, f));
        cut.add(p.towards(q, 1 - f));
      }
      now = cut;
    }
    return now;
  }

  private static void append(List<Vec> ring, Path2D path) {
    path.moveTo(ring.get(0).x(), ring.get(0).y());
    ring.forEach(p -> path.lineTo(p.x(), p.y()));
    path.closePath();
  }
}
