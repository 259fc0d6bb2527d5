package slabwright.inlay.artwork.picture;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Vec;

/** Cuts the small loops off a line that crosses itself within a few points, as near a corner. */
final class LineUntangling {
  /** A loop has at most so many points; a longer one is drawn. */
  private static final int MOST = 14;

  private static final double END = 1e-9;

  private LineUntangling() {}

  static List<Vec> untangled(List<Vec> line, boolean closed) {
    if (!closed) {
      return cut(line);
    }
    int n = line.size();
    if (n < 4) {
      return line;
    }
    // once more from the middle, so that the seam is looked at too
    List<Vec> once = new ArrayList<>(line);
    once.add(line.get(0));
    List<Vec> first = cut(once);
    first.remove(first.size() - 1);
    int half = first.size() / 2;
    List<Vec> turned = new ArrayList<>(first.subList(half, first.size()));
    turned.addAll(first.subList(0, half));
    turned.add(turned.get(0));
    List<Vec> second = cut(turned);
    second.remove(second.size() - 1);
    return second;
  }

  private static List<Vec> cut(List<Vec> line) {
    List<Vec> out = new ArrayList<>();
    for (Vec p : line) {
      if (!out.isEmpty()) {
        Vec last = out.get(out.size() - 1);
        if (last.distanceTo(p) < 1e-9) {
          continue;
        }
        for (int k = Math.max(0, out.size() - MOST); k + 2 < out.size(); k++) {
          Vec x = crossing(out.get(k), out.get(k + 1), last, p);
          if (x != null) {
            out.subList(k + 1, out.size()).clear();
            out.add(x);
            break;
          }
        }
      }
      out.add(p);
    }
    return out;
  }

  /** Where two pieces cross; null when they don't. */
  private static Vec crossing(Vec a, Vec b, Vec c, Vec d) {
    Vec u = b.minus(a);
    Vec v = d.minus(c);
    double cross = u.cross(v);
    if (cross == 0) {
      return null;
    }
    double s = c.minus(a).cross(v) / cross;
    double t = c.minus(a).cross(u) / cross;
    return isInside(s) && isInside(t) ? a.plus(u.times(s)) : null;
  }

  /** Pieces that only share an end don't cross. */
  private static boolean isInside(double t) {
    return t > END && t < 1 - END;
  }
}
