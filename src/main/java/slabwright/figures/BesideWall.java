package slabwright.figures;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/** Lines along a wall, moved onto the floor, so that the wall's own heavy line never hides them. */
public final class BesideWall {
  /** How far a line's middle stands off the wall's middle, mm of paper. */
  public static final double OFF = 1.25;

  /** Corners sharper than this do not stick out further. */
  private static final double LONGEST_MITRE = 2;

  private BesideWall() {}

  /**
   * Each line beside itself, on the side where the floor is; a line with floor on both sides or on
   * none stays where it is.
   *
   * @param off mm of floor
   */
  public static List<Line> lines(List<Line> lines, Region floor, double off) {
    return lines.stream().map(l -> line(l, floor, off)).toList();
  }

  private static Line line(Line line, Region floor, double off) {
    List<Vec> points = line.points();
    int side = longest(points);
    Vec a = points.get(side);
    Vec b = points.get(side + 1);
    Vec left = b.minus(a).unit().left();
    Vec middle = a.towards(b, 0.5);
    boolean floorLeft = floor.contains(middle.plus(left.times(off)));
    boolean floorRight = floor.contains(middle.minus(left.times(off)));
    return floorLeft == floorRight ? line : moved(points, floorLeft ? off : -off);
  }

  private static int longest(List<Vec> points) {
    int best = 0;
    for (int i = 1; i + 1 < points.size(); i++) {
      best = length(points, i) > length(points, best) ? i : best;
    }
    return best;
  }

  private static double length(List<Vec> points, int i) {
    return points.get(i).distanceTo(points.get(i + 1));
  }

  private static Line moved(List<Vec> points, double left) {
    int last = points.size() - 1;
    boolean closed = last > 1 && points.get(0).distanceTo(points.get(last)) < 1e-6;
    List<Vec> moved = new ArrayList<>();
    for (int i = 0; i <= last; i++) {
      Vec before = i > 0 ? normal(points, i - 1) : closed ? normal(points, last - 1) : null;
      Vec after = i < last ? normal(points, i) : closed ? normal(points, 0) : null;
      moved.add(points.get(i).plus(mitre(before, after).times(left)));
    }
    return new Line(moved);
  }

  private static Vec mitre(Vec before, Vec after) {
    if (before == null || after == null) {
      return before == null ? after : before;
    }
    double along = 1 + before.dot(after);
    return along < 2 / LONGEST_MITRE ? after : before.plus(after).times(1 / along);
  }

  private static Vec normal(List<Vec> points, int i) {
    return points.get(i + 1).minus(points.get(i)).unit().left();
  }
}
