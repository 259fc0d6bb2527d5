package slabwright.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What of rings and lines counts inside an upright window. Nothing is snapped: two rings that are
 * the same inside and about the window measure the same in it, to the last digit but summation's.
 */
public final class RingWindow {
  private RingWindow() {}

  /**
   * Positions of the corners that a ring must keep so that it runs round every place in the window
   * as often as before: a stretch that lies beyond one side of it may be drawn straight. Sides that
   * meet the window are kept as they are. The first corner is always kept.
   */
  public static List<Integer> corners(List<Vec> ring, Bounds window) {
    List<Integer> kept = new ArrayList<>();
    int beyond = 0;
    for (int i = 0; i < ring.size(); i++) {
      int here = beyond(ring.get(i), window);
      int next = beyond(ring.get((i + 1) % ring.size()), window);
      if (i == 0 || (beyond & here & next) == 0) {
        kept.add(i);
        beyond = here;
      } else {
        beyond &= here;
      }
    }
    return kept;
  }

  /** The ring with those corners alone; none when nothing of it can matter. */
  static Optional<Ring> ring(Ring ring, Bounds window) {
    if (!ring.bounds().meets(window)) {
      return Optional.empty();
    }
    List<Vec> points = ring.points();
    List<Integer> kept = corners(points, window);
    if (kept.size() < 3) {
      return Optional.empty();
    }
    return Optional.of(
        kept.size() == points.size() ? ring : new Ring(kept.stream().map(points::get).toList()));
  }

  /** On which sides of the window a point lies beyond it, as bits. */
  private static int beyond(Vec p, Bounds w) {
    int x = p.x() < w.minX() ? 1 : p.x() > w.maxX() ? 2 : 0;
    int y = p.y() < w.minY() ? 4 : p.y() > w.maxY() ? 8 : 0;
    return x | y;
  }

  /** The area in mm² that a ring encloses inside the window; counter-clockwise positive. */
  public static double area(Ring ring, Bounds window) {
    Bounds all = ring.bounds();
    if (!all.meets(window)) {
      return 0;
    }
    List<Vec> p = ring.points();
    if (all.minX() < window.minX()) {
      p = cut(p, new Vec(-1, 0), -window.minX());
    }
    if (all.maxX() > window.maxX()) {
      p = cut(p, new Vec(1, 0), window.maxX());
    }
    if (all.minY() < window.minY()) {
      p = cut(p, new Vec(0, -1), -window.minY());
    }
    if (all.maxY() > window.maxY()) {
      p = cut(p, new Vec(0, 1), window.maxY());
    }
    return new Ring(p).signedArea();
  }

  /** The ring up to the line where {@code out · p} is {@code most}, closed along it. */
  private static List<Vec> cut(List<Vec> ring, Vec out, double most) {
    List<Vec> kept = new ArrayList<>(ring.size() + 8);
    for (int i = 0; i < ring.size(); i++) {
      Vec p = ring.get(i);
      Vec q = ring.get((i + 1) % ring.size());
      double here = out.dot(p) - most;
      double there = out.dot(q) - most;
      if (here <= 0) {
        kept.add(p);
      }
      if ((here < 0 && there > 0) || (here > 0 && there < 0)) {
        kept.add(p.towards(q, here / (here - there)));
      }
    }
    return kept;
  }

  /** The length in mm of a straight piece inside the window, its sides included. */
  public static double length(Vec from, Vec to, Bounds window) {
    Vec along = to.minus(from);
    double[] part = {0, 1};
    narrow(part, from.x(), along.x(), window.minX(), window.maxX());
    narrow(part, from.y(), along.y(), window.minY(), window.maxY());
    return Math.max(0, part[1] - part[0]) * along.length();
  }

  /** Leaves of a piece, from 0 to 1, what lies between two bounds of one coordinate. */
  private static void narrow(double[] part, double from, double step, double least, double most) {
    if (step == 0) {
      if (from < least || from > most) {
        part[1] = part[0];
      }
      return;
    }
    double enters = ((step > 0 ? least : most) - from) / step;
    double leaves = ((step > 0 ? most : least) - from) / step;
    part[0] = Math.max(part[0], enters);
    part[1] = Math.min(part[1], leaves);
  }
}
