package slabwright.floor.reach;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import slabwright.floor.FloorTakeoff;
import slabwright.site.Machine;

/**
 * What one machine alone would grind, against the width of its body. Head and clearance keep their
 * difference to the body, as on the machine that the curve is drawn for. Where much floor is lost
 * from one width to the next, more widths are tried between them.
 *
 * @param levelled whether the trenches are taken as levelled
 * @param ground the floor to be ground, mm²
 * @param points from the narrowest body to the widest
 */
public record ReachCurve(boolean levelled, double ground, List<ReachPoint> points) {
  private static final double FIRST = 300;
  private static final double LAST = 1300;
  private static final double STEP = 100;

  /** Losing more than this share of the floor is looked at closer. */
  private static final double MUCH = 0.015;

  /** Closer than this, mm, is close enough. */
  private static final double CLOSE = 10;

  private static final int MOST = 40;

  public ReachCurve {
    points = List.copyOf(points);
  }

  /**
   * Draws the curve.
   *
   * @param like the machine whose head and clearance are kept
   */
  static ReachCurve of(
      FloorTakeoff takeoff, Machine like, boolean levelled, BooleanSupplier cancelled) {
    BottleneckSearch passage = new BottleneckSearch(takeoff, levelled, cancelled);
    List<ReachPoint> points = new ArrayList<>();
    for (double body : bodies(takeoff, like)) {
      points.add(passage.point(like, body));
    }
    double ground = takeoff.ground().area();
    for (int i = 0; i + 1 < points.size() && points.size() < MOST; ) {
      ReachPoint a = points.get(i);
      ReachPoint b = points.get(i + 1);
      if (a.machine() - b.machine() > MUCH * ground && b.body() - a.body() > CLOSE) {
        points.add(i + 1, passage.point(like, (a.body() + b.body()) / 2));
      } else {
        i++;
      }
    }
    return new ReachCurve(levelled, ground, points);
  }

  private static TreeSet<Double> bodies(FloorTakeoff takeoff, Machine like) {
    TreeSet<Double> bodies = new TreeSet<>();
    double widest =
        takeoff.area().machines().stream().mapToDouble(m -> m.body().mm()).max().orElse(LAST);
    for (double body = FIRST; body <= Math.max(LAST, widest + STEP); body += STEP) {
      bodies.add(body);
    }
    bodies.add(like.body().mm());
    return bodies;
  }

  /** The share of the floor that is ground at a point, 0 to 1. */
  public double share(ReachPoint point) {
    return ground == 0 ? 0 : point.machine() / ground;
  }

  /** The share at any width, on a straight line between the points; held beyond the ends. */
  public double share(double body) {
    ReachPoint before = points.get(0);
    for (ReachPoint p : points) {
      if (p.body() >= body) {
        double run = p.body() - before.body();
        double t = run == 0 ? 1 : Math.max(0, (body - before.body()) / run);
        return share(before) + t * (share(p) - share(before));
      }
      before = p;
    }
    return share(before);
  }

  /** The widest steps down, largest first: from the narrower body to the wider one. */
  public List<Drop> drops() {
    List<Drop> drops = new ArrayList<>();
    for (int i = 0; i + 1 < points.size(); i++) {
      Drop d = new Drop(points.get(i), points.get(i + 1));
      if (d.lost() > MUCH * ground && d.to().body() - d.from().body() <= CLOSE) {
        drops.add(d);
      }
    }
    drops.sort(Comparator.comparingDouble(d -> -d.lost()));
    return drops;
  }

  /** Floor that a slightly wider body loses: a gap on the way is shut to it. */
  public record Drop(ReachPoint from, ReachPoint to) {
    /** Area lost, mm². */
    public double lost() {
      return from.machine() - to.machine();
    }
  }
}
