package slabwright.inlay.artwork.picture;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import slabwright.inlay.artwork.PathFlattener;
import slabwright.shape.FillRule;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * How far traced outlines are from the drawn ones.
 *
 * @param difference area that only one of them covers, as a share of the drawn area
 * @param p95 distance from the drawn edge to the nearest traced one that 95 % keep, in pixels
 */
record TraceScore(double difference, double p95) {
  /** Grid steps of 0.001 in a pixel, enough for any tracer. */
  private static final double STEP = 10;

  /** Places on the edge that are measured are two pixels apart. */
  private static final double APART = 2 * STEP;

  private static final double CELL = 4 * STEP;

  static TraceScore of(List<Shape> drawn, List<? extends Shape> traced, int side) {
    double off = 0;
    double area = 0;
    List<Double> far = new ArrayList<>();
    for (int i = 0; i < drawn.size(); i++) {
      Region a = region(drawn.get(i), side * STEP);
      Region b = region(traced.get(i), STEP);
      off += a.minus(b).area() + b.minus(a).area();
      area += a.area();
      distances(a, b, far);
    }
    double[] sorted = far.stream().mapToDouble(d -> d).sorted().toArray();
    return new TraceScore(off / area, sorted[(int) (sorted.length * 0.95)] / STEP);
  }

  static Region region(Shape s, double scale) {
    Path2D path = new Path2D.Double(s);
    List<Ring> rings =
        PathFlattener.rings(path, AffineTransform.getScaleInstance(scale, scale), 0.01);
    return Region.of(
        rings,
        path.getWindingRule() == PathIterator.WIND_EVEN_ODD ? FillRule.EVEN_ODD : FillRule.NONZERO);
  }

  private static void distances(Region drawn, Region traced, List<Double> out) {
    Map<Long, List<double[]>> pieces = new HashMap<>();
    for (Ring r : traced.rings()) {
      for (int i = 0; i < r.points().size(); i++) {
        Vec p = r.points().get(i);
        Vec q = r.points().get((i + 1) % r.points().size());
        int parts = (int) Math.ceil(p.distanceTo(q) / CELL) + 1;
        for (int k = 0; k < parts; k++) {
          Vec a = p.towards(q, (double) k / parts);
          Vec b = p.towards(q, (k + 1.0) / parts);
          pieces
              .computeIfAbsent(key(cell(a.x()), cell(a.y())), c -> new ArrayList<>())
              .add(new double[] {a.x(), a.y(), b.x(), b.y()});
        }
      }
    }
    for (Ring r : drawn.rings()) {
      double next = 0;
      for (int i = 0; i < r.points().size(); i++) {
        Vec p = r.points().get(i);
        Vec q = r.points().get((i + 1) % r.points().size());
        double length = p.distanceTo(q);
        for (; next < length; next += APART) {
          out.add(nearest(p.towards(q, next / length), pieces));
        }
        next -= length;
      }
    }
  }

  private static int cell(double v) {
    return (int) Math.floor(v / CELL);
  }

  private static long key(int x, int y) {
    return ((long) x << 32) ^ (y & 0xffffffffL);
  }

  /** Looks in ever wider squares of cells; a piece lies within a cell of where it starts. */
  private static double nearest(Vec p, Map<Long, List<double[]>> pieces) {
    double least = 1e9;
    for (int reach = 1; reach < 64; reach++) {
      for (int y = cell(p.y()) - reach; y <= cell(p.y()) + reach; y++) {
        for (int x = cell(p.x()) - reach; x <= cell(p.x()) + reach; x++) {
          least = Math.min(least, distance(p, pieces.getOrDefault(key(x, y), List.of())));
        }
      }
      if (least <= (reach - 1) * CELL) {
        return least;
      }
    }
    return least;
  }

  private static double distance(Vec p, List<double[]> pieces) {
    double least = 1e9;
    for (double[] s : pieces) {
      double dx = s[2] - s[0];
      double dy = s[3] - s[1];
      double t = ((p.x() - s[0]) * dx + (p.y() - s[1]) * dy) / (dx * dx + dy * dy);
      t = Math.max(0, Math.min(1, t));
      least = Math.min(least, Math.hypot(p.x() - s[0] - t * dx, p.y() - s[1] - t * dy));
    }
    return least;
  }
}
