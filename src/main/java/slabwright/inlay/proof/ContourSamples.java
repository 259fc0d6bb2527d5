package slabwright.inlay.proof;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** Points along contours with the direction they run in, found by place. */
final class ContourSamples {
  /** A point of a contour and the unit vector across it. */
  record Sample(Vec at, Vec normal) {}

  /** Far more than a square and a sum are rounded by. */
  private static final double ROUNDING = 1 + 1e-9;

  private final double cell;
  private final Map<Long, List<Sample>> cells = new HashMap<>();

  ContourSamples(List<Ring> rings, double step, double cell) {
    this.cell = cell;
    for (Ring ring : rings) {
      List<Vec> p = ring.points();
      for (int i = 0; i < p.size(); i++) {
        add(p.get(i), p.get((i + 1) % p.size()), step);
      }
    }
  }

  private void add(Vec a, Vec b, double step) {
    double length = a.distanceTo(b);
    if (length == 0) {
      return;
    }
    Vec normal = b.minus(a).unit().left();
    int n = (int) Math.ceil(length / step);
    for (int i = 0; i < n; i++) {
      Vec at = a.towards(b, (i + 0.5) / n);
      cells
          .computeIfAbsent(key(at.x(), at.y()), k -> new ArrayList<>())
          .add(new Sample(at, normal));
    }
  }

  private long key(double x, double y) {
    return pack((long) Math.floor(x / cell), (long) Math.floor(y / cell));
  }

  private static long pack(long column, long row) {
    return column * 4_000_037L + row;
  }

  /** The nearest sample within {@code reach}, which is at most one cell. */
  Optional<Sample> nearest(Vec p, double reach) {
    long column = (long) Math.floor(p.x() / cell);
    long row = (long) Math.floor(p.y() / cell);
    Sample best = null;
    double nearest = reach;
    for (long c = column - 1; c <= column + 1; c++) {
      for (long r = row - 1; r <= row + 1; r++) {
        for (Sample s : cells.getOrDefault(pack(c, r), List.of())) {
          if (mayBeWithin(s.at, p, nearest)) {
            double d = s.at.distanceTo(p);
            if (d <= nearest) {
              nearest = d;
              best = s;
            }
          }
        }
      }
    }
    return Optional.ofNullable(best);
  }

  /** False only for points farther apart: most are, and a root for each would cost the most. */
  private static boolean mayBeWithin(Vec a, Vec b, double distance) {
    double x = a.x() - b.x();
    double y = a.y() - b.y();
    return x * x + y * y <= distance * distance * ROUNDING;
  }

  /** Points along rings, about {@code step} apart. */
  static List<Vec> along(List<Ring> rings, double step) {
    List<Vec> points = new ArrayList<>();
    double carried = 0;
    for (Ring ring : rings) {
      List<Vec> p = ring.points();
      for (int i = 0; i < p.size(); i++) {
        Vec a = p.get(i);
        Vec b = p.get((i + 1) % p.size());
        double length = a.distanceTo(b);
        double at = step - carried;
        for (; at <= length; at += step) {
          points.add(a.towards(b, at / length));
        }
        carried = length - (at - step);
      }
    }
    return points;
  }
}
