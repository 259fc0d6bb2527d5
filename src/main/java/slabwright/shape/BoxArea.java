package slabwright.shape;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;

/**
 * What several upright rectangles cover together: a window of any shape, such as a strip along two
 * walls. Areas in mm², lengths in mm.
 *
 * @param boxes the same area as rectangles that share no more than sides, by columns from the left
 */
public record BoxArea(List<Bounds> boxes) {
  /** So far beside a side it is asked whether the area goes on, mm. */
  private static final double BESIDE = 1e-4;

  public BoxArea {
    boxes = List.copyOf(boxes);
  }

  /** What the rectangles cover, whether they overlap or not. */
  public static BoxArea of(Collection<Bounds> all) {
    TreeSet<Double> sides = new TreeSet<>();
    for (Bounds b : all) {
      sides.add(b.minX());
      sides.add(b.maxX());
    }
    List<Bounds> done = new ArrayList<>();
    List<Bounds> open = new ArrayList<>();
    List<Double> columns = List.copyOf(sides);
    for (int i = 0; i + 1 < columns.size(); i++) {
      open = goOn(open, column(all, columns.get(i), columns.get(i + 1)), done);
    }
    done.addAll(open);
    return new BoxArea(done);
  }

  /** What is covered between two neighbouring sides, from below. */
  private static List<Bounds> column(Collection<Bounds> all, double left, double right) {
    List<Bounds> there = new ArrayList<>();
    all.stream()
        .filter(b -> b.minX() <= left && b.maxX() >= right && b.minY() <= b.maxY())
        .sorted((a, b) -> Double.compare(a.minY(), b.minY()))
        .forEach(
            b -> {
              int last = there.size() - 1;
              double from = b.minY();
              double to = b.maxY();
              if (last >= 0 && there.get(last).maxY() >= from) {
                from = there.get(last).minY();
                to = Math.max(to, there.remove(last).maxY());
              }
              there.add(new Bounds(left, from, right, to));
            });
    return there;
  }

  /** Columns side by side that are the same height become one; those that end are done. */
  private static List<Bounds> goOn(List<Bounds> open, List<Bounds> next, List<Bounds> done) {
    List<Bounds> left = new ArrayList<>(open);
    List<Bounds> now = new ArrayList<>();
    for (Bounds n : next) {
      Bounds wider = n;
      for (Bounds o : open) {
        if (o.minY() == n.minY() && o.maxY() == n.maxY()) {
          wider = o.including(n);
          left.remove(o);
        }
      }
      now.add(wider);
    }
    done.addAll(left);
    return now;
  }

  /** The smallest rectangle about all of it. */
  public Bounds bounds() {
    return boxes.stream().reduce(Bounds.EMPTY, Bounds::including);
  }

  public boolean meets(Bounds o) {
    return boxes.stream().anyMatch(b -> b.meets(o));
  }

  public boolean meets(BoxArea o) {
    return o.boxes.stream().anyMatch(this::meets);
  }

  private boolean contains(Vec p) {
    return boxes.stream().anyMatch(b -> b.contains(p));
  }

  /** Whether one of its rectangles holds all of the other; false says nothing for certain. */
  public boolean surelyHolds(Bounds o) {
    Vec low = new Vec(o.minX(), o.minY());
    Vec high = new Vec(o.maxX(), o.maxY());
    return boxes.stream().anyMatch(b -> b.contains(low) && b.contains(high));
  }

  /** The area of a region inside. */
  public double area(Region region) {
    List<Ring> rings = region.rings();
    double sum = 0;
    for (Bounds box : boxes) {
      for (Ring ring : rings) {
        sum += RingWindow.area(ring, box);
      }
    }
    return sum;
  }

  /** The same area with its seams dissolved. */
  public Region region() {
    return Region.of(rectangles(), FillRule.NONZERO);
  }

  /** Its boundary, as few rings as that takes: one box has no seam to dissolve. */
  List<Ring> outline() {
    return boxes.size() == 1 ? rectangles() : region().rings();
  }

  private List<Ring> rectangles() {
    return boxes.stream().map(b -> Ring.rectangle(b.minX(), b.minY(), b.maxX(), b.maxY())).toList();
  }

  /** Whether a straight upright piece lies on its boundary, within {@code near} mm. */
  public boolean hasOnSide(Vec from, Vec to, double near) {
    return (from.x() == to.x() || from.y() == to.y())
        && boxes.stream().anyMatch(b -> isOnSide(b, from, to, near))
        && isOuter(from, to, near);
  }

  private static boolean isOnSide(Bounds b, Vec p, Vec q, double near) {
    boolean upright =
        p.x() == q.x()
            && (Math.abs(p.x() - b.minX()) < near || Math.abs(p.x() - b.maxX()) < near)
            && Math.min(p.y(), q.y()) <= b.maxY()
            && Math.max(p.y(), q.y()) >= b.minY();
    boolean level =
        p.y() == q.y()
            && (Math.abs(p.y() - b.minY()) < near || Math.abs(p.y() - b.maxY()) < near)
            && Math.min(p.x(), q.x()) <= b.maxX()
            && Math.max(p.x(), q.x()) >= b.minX();
    return upright || level;
  }

  private boolean isOuter(Vec from, Vec to, double near) {
    Vec middle = from.towards(to, 0.5);
    Vec beside = to.minus(from).left().unit().times(near + BESIDE);
    return contains(middle.plus(beside)) != contains(middle.minus(beside));
  }
}
