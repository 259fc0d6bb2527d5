package slabwright.inlay.artwork.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import slabwright.shape.Vec;

/**
 * A run of an edge without a corner, made straight where it is straight within its noise, else
 * smoothed as far as its points allow, at each place as far as there.
 */
final class EdgeSpan {
  /** Lengths over which an edge is smoothed, in pixels; the longest that holds is taken. */
  private static final double[] LENGTHS = {4, 6, 9, 13, 19, 28, 42, 63};

  private static final double STRAIGHT_FACTOR = 1.5;
  private static final double STRAIGHT_LEAST = 0.04;
  private static final double STRAIGHT_WORST = 3.2;
  private static final double STRAY_FACTOR = 1.25;
  private static final int AROUND = 2;
  private static final double END = 3;
  private static final int BETWEEN = 3;

  private final double[] x;
  private final double[] y;
  private final double[] t;
  private final double noise;
  private boolean straight;

  /**
   * @param points at least two, in order
   * @param noise root mean square stray of points, in pixels
   */
  EdgeSpan(List<Vec> points, double noise) {
    this.x = points.stream().mapToDouble(Vec::x).toArray();
    this.y = points.stream().mapToDouble(Vec::y).toArray();
    this.t = EdgePoints.ways(x, y);
    this.noise = noise;
    fit();
  }

  private void fit() {
    EdgeLine line = EdgeLine.of(x, y, 0, x.length);
    double worst = 0;
    for (int i = 0; i < x.length; i++) {
      worst = Math.max(worst, Math.abs(line.side(x[i], y[i])));
    }
    double allowed = Math.max(STRAIGHT_LEAST, STRAIGHT_FACTOR * noise);
    if (x.length < 3 || (line.off() <= allowed && worst <= STRAIGHT_WORST * allowed)) {
      straight = true;
      for (int i = 0; i < x.length; i++) {
        Vec p = line.nearest(new Vec(x[i], y[i]));
        x[i] = p.x();
        y[i] = p.y();
      }
    } else {
      smooth();
    }
  }

  private void smooth() {
    int n = x.length;
    double[] ones = new double[n];
    Arrays.fill(ones, 1);
    double[] price = new double[n];
    Arrays.fill(price, price(LENGTHS[0]));
    boolean[] done = new boolean[n];
    for (int k = 1; k < LENGTHS.length; k++) {
      double[] u = x.clone();
      double[] v = y.clone();
      double[] all = new double[n];
      Arrays.fill(all, price(LENGTHS[k]));
      new BandedSmoother(t, ones).smooth(all, u, v);
      for (int i = 0; i < n; i++) {
        done[i] |= stray(u, v, i) > Math.max(STRAIGHT_LEAST, STRAY_FACTOR * noise);
      }
      for (int i = 0; i < n; i++) {
        int reach = (int) Math.ceil(LENGTHS[k] / 2);
        boolean near = false;
        for (int j = Math.max(0, i - reach); j <= Math.min(n - 1, i + reach); j++) {
          near |= done[j];
        }
        price[i] = near ? price[i] : price(LENGTHS[k]);
      }
    }
    new BandedSmoother(t, ones).smooth(price, x, y);
  }

  private static double price(double length) {
    return Math.pow(length / (2 * Math.PI), 6);
  }

  /** How far points around one stray to one side of the smoothed edge. */
  private double stray(double[] u, double[] v, int i) {
    int from = Math.max(0, i - AROUND);
    int to = Math.min(x.length - 1, i + AROUND);
    double dx = u[to] - u[from];
    double dy = v[to] - v[from];
    double length = Math.max(1e-9, Math.hypot(dx, dy));
    double sum = 0;
    for (int j = from; j <= to; j++) {
      sum += ((x[j] - u[j]) * dy - (y[j] - v[j]) * dx) / length;
    }
    return Math.abs(sum) / (to - from + 1);
  }

  /** The line in which it ends, directed outwards. */
  EdgeLine end(boolean last) {
    int n = x.length;
    int count = 1;
    while (count < n
        && (straight || Math.abs(t[last ? n - 1 - count : count] - t[last ? n - 1 : 0]) <= END)) {
      count++;
    }
    count = Math.min(n, Math.max(2, count));
    EdgeLine line = EdgeLine.of(x, y, last ? n - count : 0, last ? n : count);
    return last ? line : new EdgeLine(line.middle(), line.along().times(-1), line.off());
  }

  /** The edge from one of its points to another, with some between them where it curves. */
  List<Vec> line(int from, int to) {
    List<Vec> out = new ArrayList<>();
    for (int i = from; i < to; i++) {
      out.add(at(i));
      for (int k = 1; !straight && k < BETWEEN; k++) {
        out.add(between(i, (double) k / BETWEEN));
      }
    }
    out.add(at(to));
    return out;
  }

  List<Vec> line() {
    return straight ? List.of(at(0), at(x.length - 1)) : line(0, x.length - 1);
  }

  private Vec between(int i, double f) {
    Vec a = at(i - 1);
    Vec b = at(i);
    Vec c = at(i + 1);
    Vec d = at(i + 2);
    // the cubic through b and c with the slopes of their neighbours
    Vec m = c.minus(a).times(0.5);
    Vec q = d.minus(b).times(0.5);
    double f2 = f * f;
    double f3 = f2 * f;
    return b.times(2 * f3 - 3 * f2 + 1)
        .plus(m.times(f3 - 2 * f2 + f))
        .plus(c.times(3 * f2 - 2 * f3))
        .plus(q.times(f3 - f2));
  }

  private Vec at(int i) {
    int n = x.length;
    if (i < 0) {
      return new Vec(2 * x[0] - x[1], 2 * y[0] - y[1]);
    }
    return i < n ? new Vec(x[i], y[i]) : new Vec(2 * x[n - 1] - x[n - 2], 2 * y[n - 1] - y[n - 2]);
  }
}
