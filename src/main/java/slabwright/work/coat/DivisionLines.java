package slabwright.work.coat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** Proposes lines across a floor so that no section between them is larger than can be laid. */
final class DivisionLines {
  /** A joint this straight and this square to the floor's length divides it, mm. */
  private static final double STRAY = 150;

  /** So much of the floor's width a joint must cross. */
  private static final double ACROSS = 0.9;

  /** A joint that makes a section smaller than this share of the largest is passed over. */
  private static final double LEAST = 0.4;

  /** Lines are cut past the walls by so much, mm: a sawn joint ends just before them. */
  private static final double PAST = 300;

  private static final double EXACT = 1;

  private final Region floor;
  private final Bounds bounds;
  private final Affine back;
  private final List<Line> joints;

  private DivisionLines(DivisionParameters site, double along) {
    Affine turn = Affine.turn(-along);
    this.floor = site.floor().map(turn);
    this.bounds = floor.bounds();
    this.back = turn.inverse();
    this.joints =
        site.joints().stream()
            .map(l -> new Line(l.points().stream().map(turn::apply).toList()))
            .filter(this::divides)
            .toList();
  }

  /**
   * Lines across the floor's longest side and lines along it, each at joints where one lies well;
   * the better ones first. Fewest sections count most, then the shortest edge off joints, for it is
   * seen for ever, then the shortest lines.
   */
  static List<List<DividedCoat.DivisionLine>> propose(DivisionParameters site, double most) {
    double along = alongLongest(site.floor());
    return Stream.of(along, along + Math.PI / 2)
        .map(angle -> new DivisionLines(site, angle).lines(most))
        .sorted(
            Comparator.comparing((List<DividedCoat.DivisionLine> l) -> l.size())
                .thenComparing(l -> taped(site.floor(), l))
                .thenComparing(l -> inside(site.floor(), l)))
        .toList();
  }

  private static long taped(Region floor, List<DividedCoat.DivisionLine> lines) {
    return inside(
        floor, lines.stream().filter(l -> l.source() == DividedCoat.Source.STRAIGHT).toList());
  }

  /** Whole mm, so that lines of one length stand in the order they were proposed in. */
  private static long inside(Region floor, List<DividedCoat.DivisionLine> lines) {
    return Math.round(lines.stream().mapToDouble(l -> length(floor.clip(l.line()))).sum());
  }

  /** The line, longer at both ends. */
  static Line pastTheWalls(Line l) {
    List<Vec> p = new ArrayList<>(l.points());
    int last = p.size() - 1;
    p.set(0, p.get(0).plus(p.get(0).minus(p.get(1)).unit().times(PAST)));
    p.set(last, p.get(last).plus(p.get(last).minus(p.get(last - 1)).unit().times(PAST)));
    return new Line(p);
  }

  private List<DividedCoat.DivisionLine> lines(double most) {
    List<DividedCoat.DivisionLine> lines = new ArrayList<>();
    double from = bounds.minX();
    double left = floor.area();
    while (left > most) {
      double start = from;
      Optional<Line> joint =
          joints.stream()
              .filter(j -> isGood(area(start, x(j)), most))
              .max(Comparator.comparingDouble(DivisionLines::x));
      double at =
          joint.isPresent() ? x(joint.get()) : straight(from, left / Math.ceil(left / most));
      Line line = joint.orElse(Line.of(new Vec(at, bounds.minY()), new Vec(at, bounds.maxY())));
      lines.add(
          new DividedCoat.DivisionLine(
              new Line(line.points().stream().map(back::apply).toList()),
              joint.isPresent() ? DividedCoat.Source.JOINT : DividedCoat.Source.STRAIGHT));
      left -= area(from, at);
      from = at;
    }
    return lines;
  }

  private static boolean isGood(double area, double most) {
    return area <= most && area >= LEAST * most;
  }

  private double area(double from, double to) {
    return to <= from
        ? 0
        : floor
            .intersect(Region.rectangle(new Bounds(from, bounds.minY() - 1, to, bounds.maxY() + 1)))
            .area();
  }

  /** Where a straight line leaves an area behind it. */
  private double straight(double from, double area) {
    double low = from;
    double high = bounds.maxX();
    while (high - low > EXACT) {
      double middle = (low + high) / 2;
      if (area(from, middle) > area) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return low > from ? low : high;
  }

  private static double x(Line l) {
    return l.points().stream().mapToDouble(Vec::x).average().orElse(0);
  }

  /** Straight, square to the floor's length, from wall to wall. */
  private boolean divides(Line joint) {
    double x = x(joint);
    Line across = Line.of(new Vec(x, bounds.minY() - 1), new Vec(x, bounds.maxY() + 1));
    return joint.points().stream().allMatch(p -> Math.abs(p.x() - x) < STRAY)
        && length(floor.clip(joint)) >= ACROSS * length(floor.clip(across));
  }

  private static double length(List<Line> lines) {
    return lines.stream().mapToDouble(Line::length).sum();
  }

  /** The direction in which the floor is longest, of those of its longest side and square to it. */
  private static double alongLongest(Region floor) {
    double longest = 0;
    double angle = 0;
    for (Ring ring : floor.shells()) {
      List<Vec> p = ring.points();
      for (int i = 0; i < p.size(); i++) {
        Vec side = p.get((i + 1) % p.size()).minus(p.get(i));
        if (side.length() > longest) {
          longest = side.length();
          angle = side.angle();
        }
      }
    }
    double turned = Math.abs(Math.sin(angle)) < 1e-9 ? 0 : angle;
    Bounds b = floor.map(Affine.turn(-turned)).bounds();
    return b.width() >= b.height() ? turned : turned + Math.PI / 2;
  }
}
