package slabwright.floor.reach;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.shape.near.BoxIndex;

/**
 * The gaps of a floor: lines across it between two points of its boundary that are nearer to each
 * other than all round them, with nothing else nearer to their middle. Straight walls side by side
 * have theirs half way. Exact; floor widths in mm.
 */
final class GapFinder {
  /** Narrower than this, mm, no floor machine is (common practice, no source). */
  private static final double LEAST = 200;

  /** Grid steps and flattening, mm. */
  private static final double SLACK = 0.5;

  /** Sides that differ by less than this, as a sine, run side by side. */
  private static final double PARALLEL = 1e-3;

  /** Gaps nearer to a narrower one than so many of the widest gap are the same way through. */
  private static final double SAME_WAY = 1.5;

  private record Side(Vec from, Vec to, Vec before) {
    Vec along() {
      return to.minus(from).unit();
    }

    /** Whether what stands juts out into the floor at its first corner. */
    boolean juts() {
      return from.minus(before).cross(to.minus(from)) < 0;
    }

    /** Whether both sides at its first corner fall back from a direction. */
    boolean points(Vec direction) {
      return juts()
          && direction.dot(along()) < -PARALLEL
          && direction.dot(before.minus(from).unit()) < -PARALLEL;
    }

    double distanceTo(Vec p) {
      double t = p.minus(from).dot(along());
      return p.distanceTo(at(Math.max(0, Math.min(from.distanceTo(to), t))));
    }

    Vec at(double t) {
      return from.plus(along().times(t));
    }
  }

  private final Region floor;
  private final double widest;

  /** How far a corner may miss another and still stand right across from it, mm. */
  private final double across;

  private final List<Side> sides = new ArrayList<>();
  private final Map<Long, List<Integer>> cells = new HashMap<>();
  private final List<Line> found = new ArrayList<>();

  private GapFinder(Region floor, double widest) {
    this.floor = floor;
    this.widest = widest;
    this.across = Math.max(SLACK, PARALLEL * widest);
    for (Ring ring : floor.rings()) {
      List<Vec> p = ring.points();
      for (int i = 0; i < p.size(); i++) {
        add(new Side(p.get(i), p.get((i + 1) % p.size()), p.get((i + p.size() - 1) % p.size())));
      }
    }
  }

  /** The gaps up to a width, the narrowest first; each way through once, at its narrowest. */
  static List<Line> find(Region floor, double widest) {
    GapFinder finder = new GapFinder(floor, widest);
    for (int i = 0; i < finder.sides.size(); i++) {
      for (int j : finder.near(finder.sides.get(i))) {
        if (i != j) {
          finder.check(finder.sides.get(i), finder.sides.get(j), i < j);
        }
      }
    }
    return finder.waysThrough();
  }

  private void add(Side side) {
    int n = sides.size();
    sides.add(side);
    for (long key : keys(side, SLACK)) {
      cells.computeIfAbsent(key, k -> new ArrayList<>()).add(n);
    }
  }

  private Set<Long> keys(Side s, double round) {
    Set<Long> keys = new TreeSet<>();
    int x0 = cell(Math.min(s.from().x(), s.to().x()) - round);
    int x1 = cell(Math.max(s.from().x(), s.to().x()) + round);
    int y0 = cell(Math.min(s.from().y(), s.to().y()) - round);
    int y1 = cell(Math.max(s.from().y(), s.to().y()) + round);
    for (int x = x0; x <= x1; x++) {
      for (int y = y0; y <= y1; y++) {
        keys.add(((long) x << 32) ^ (y & 0xffffffffL));
      }
    }
    return keys;
  }

  private int cell(double v) {
    return (int) Math.floor(v / (2 * widest));
  }

  private Set<Integer> near(Side s) {
    Set<Integer> near = new TreeSet<>();
    for (long key : keys(s, widest)) {
      near.addAll(cells.getOrDefault(key, List.of()));
    }
    return near;
  }

  private void check(Side a, Side b, boolean first) {
    double t = a.from().minus(b.from()).dot(b.along());
    double length = b.from().distanceTo(b.to());
    boolean beside = t > -across && t < length + across;
    if (beside) {
      Vec foot = b.at(Math.max(0, Math.min(length, t)));
      if (a.points(foot.minus(a.from()).unit()) && isFloorBetween(b, a.from())) {
        take(a.from(), foot);
      }
    }
    if (first) {
      Vec over = b.from().minus(a.from()).unit();
      if (a.points(over) && b.points(over.times(-1))) {
        take(a.from(), b.from());
      }
      faceEachOther(a, b);
    }
  }

  private static boolean isFloorBetween(Side wall, Vec p) {
    return wall.along().cross(p.minus(wall.from())) > 0;
  }

  /** Two walls side by side, if only by their ends, the floor between them. */
  private void faceEachOther(Side a, Side b) {
    if (a.along().dot(b.along()) > 0
        || Math.abs(a.along().cross(b.along())) > PARALLEL
        || !isFloorBetween(a, b.from())) {
      return;
    }
    double one = b.from().minus(a.from()).dot(a.along());
    double other = b.to().minus(a.from()).dot(a.along());
    double begin = Math.max(0, Math.min(one, other));
    double end = Math.min(a.from().distanceTo(a.to()), Math.max(one, other));
    if (begin < end + across) {
      Vec from = a.at((begin + end) / 2);
      double t = from.minus(b.from()).dot(b.along());
      take(from, b.at(t));
    }
  }

  private void take(Vec from, Vec to) {
    double width = from.distanceTo(to);
    if (width < LEAST || width > widest) {
      return;
    }
    Vec middle = from.towards(to, 0.5);
    Side here = new Side(middle, middle, middle);
    for (int i : near(here)) {
      if (sides.get(i).distanceTo(middle) < width / 2 - SLACK) {
        return;
      }
    }
    found.add(Line.of(from, to));
  }

  private List<Line> waysThrough() {
    List<Line> ways = new ArrayList<>();
    BoxIndex<Line> kept = new BoxIndex<>();
    found.sort(
        Comparator.comparingDouble(Line::length)
            .thenComparing(l -> middle(l).x())
            .thenComparing(l -> middle(l).y()));
    for (Line gap : found) {
      Bounds at = Bounds.of(List.of(middle(gap)));
      if (!kept.any(at.grown(SAME_WAY * widest), k -> isSameWay(k, gap)) && leadsOn(gap)) {
        ways.add(gap);
        kept.add(at, gap);
      }
    }
    return ways;
  }

  private boolean isSameWay(Line kept, Line gap) {
    Vec a = middle(kept);
    Vec b = middle(gap);
    if (a.distanceTo(b) < SLACK) {
      return true;
    }
    return a.distanceTo(b) < SAME_WAY * widest
        && floor.clip(Line.of(a, b)).stream().mapToDouble(Line::length).sum()
            > a.distanceTo(b) - SLACK;
  }

  /** There is floor on both sides; a shallow recess is no gap. */
  private boolean leadsOn(Line gap) {
    Vec run = gap.points().get(1).minus(gap.points().get(0)).left().times(0.5);
    return floor.contains(middle(gap).plus(run)) && floor.contains(middle(gap).minus(run));
  }

  private static Vec middle(Line l) {
    return l.points().get(0).towards(l.points().get(1), 0.5);
  }
}
