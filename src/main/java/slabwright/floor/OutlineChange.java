package slabwright.floor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import slabwright.shape.Bounds;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.OutlineShape;
import slabwright.site.PieceKind;

/**
 * Where a floor changes when corners of its outline are moved: boxes along the pieces that change,
 * and about the ways in that do.
 *
 * <p>A piece that moves from one place to the other all at once sweeps no more than the convex hull
 * of both. The outline runs round every point that no piece so sweeps as often as before, so there
 * the floor is the same.
 */
final class OutlineChange {
  /** Slices of a hull are as long as a step, doubled so often that there are so many at most. */
  private static final int SLICES = 40;

  /** A hull that is no wider than this is not cut into slices, mm. */
  private static final double NARROW = 1_500;

  private final FloorArea before;
  private final FloorArea after;
  private final double tolerance;
  private final List<Bounds> boxes = new ArrayList<>();

  private OutlineChange(FloorArea before, FloorArea after, double tolerance) {
    this.before = before;
    this.after = after;
    this.tolerance = tolerance;
  }

  /**
   * Boxes that hold all that changes; none when the outline has another number of pieces. A corner
   * that is dragged changes them only when it leaves a square of one step.
   */
  static Optional<List<Bounds>> between(
      LocalTakeoff.Whole was, LocalTakeoff.Whole is, double tolerance) {
    FloorArea before = was.area();
    FloorArea after = is.area();
    if (before.outline().size() != after.outline().size()) {
      return Optional.empty();
    }
    OutlineChange change = new OutlineChange(before, after, tolerance);
    change.addPieces();
    change.addWaysIn(was, is);
    return Optional.of(change.boxes);
  }

  private void addPieces() {
    OutlineShape old = OutlineShape.of(before.outline(), tolerance);
    OutlineShape now = OutlineShape.of(after.outline(), tolerance);
    for (int i = 0; i < before.outline().size(); i++) {
      List<Vec> from = old.pieces().get(i).points();
      List<Vec> to = now.pieces().get(i).points();
      if (!from.equals(to) || kind(before, i) != kind(after, i)) {
        add(changed(i, from, to));
      }
    }
  }

  private static PieceKind kind(FloorArea area, int piece) {
    return area.outline().get(piece).kind();
  }

  /** The points whose hull holds all that one piece changes. */
  private List<Vec> changed(int piece, List<Vec> from, List<Vec> to) {
    List<Vec> points = new ArrayList<>();
    boolean lengthened = isLengthened(piece, from, to);
    if (lengthened && from.get(0).equals(to.get(0))) {
      points.add(from.get(1));
      addCell(to.get(1), points);
    } else if (lengthened && from.get(1).equals(to.get(1)) && !hasDoorway(piece)) {
      points.add(from.get(0));
      addCell(to.get(0), points);
    } else {
      points.addAll(from);
      to.forEach(p -> addCell(p, points));
    }
    return points;
  }

  /** Whether a straight piece keeps its direction. */
  private boolean isLengthened(int piece, List<Vec> from, List<Vec> to) {
    return from.size() == 2
        && to.size() == 2
        && kind(before, piece) == kind(after, piece)
        && from.get(1).minus(from.get(0)).cross(to.get(1).minus(to.get(0))) == 0;
  }

  /** Doorways are measured from the first corner of their piece, and move with it. */
  private boolean hasDoorway(int piece) {
    return after.doorways().stream().anyMatch(d -> d.piece() == piece);
  }

  /** So that a corner that is dragged stays in one window a while. */
  private static void addCell(Vec p, List<Vec> points) {
    Bounds cell = FloorWindow.stepped(Bounds.of(List.of(p)));
    points.addAll(Ring.rectangle(cell.minX(), cell.minY(), cell.maxX(), cell.maxY()).points());
  }

  /** Boxes that hold the hull of the points: one, or slices across it where it lies askew. */
  private void add(List<Vec> points) {
    Bounds all = Bounds.of(points);
    boolean lies = all.width() >= all.height();
    double length = Math.max(all.width(), all.height());
    double across = Math.min(all.width(), all.height());
    if (across <= NARROW) {
      boxes.add(all);
      return;
    }
    List<Vec> hull = Hull.of(points).points();
    double slice = FloorWindow.STEP;
    while (length / slice > Math.min(SLICES, 2 * across / FloorWindow.STEP)) {
      slice *= 2;
    }
    double start = lies ? all.minX() : all.minY();
    for (double at = slice * Math.floor(start / slice); at < start + length; at += slice) {
      Bounds part = slice(hull, lies, at, at + slice);
      if (!part.isEmpty()) {
        boxes.add(part);
      }
    }
  }

  /** The box about what of a convex ring lies between two columns, or two rows. */
  private static Bounds slice(List<Vec> hull, boolean lies, double from, double to) {
    Bounds part = Bounds.EMPTY;
    for (int i = 0; i < hull.size(); i++) {
      Vec p = hull.get(i);
      Vec q = hull.get((i + 1) % hull.size());
      double a = lies ? p.x() : p.y();
      double b = lies ? q.x() : q.y();
      if (Math.max(a, b) >= from && Math.min(a, b) <= to) {
        double first = a == b ? 0 : Math.max(0, Math.min(1, (from - a) / (b - a)));
        double last = a == b ? 1 : Math.max(0, Math.min(1, (to - a) / (b - a)));
        part = part.including(p.towards(q, first)).including(p.towards(q, last));
      }
    }
    return part;
  }

  private void addWaysIn(LocalTakeoff.Whole was, LocalTakeoff.Whole is) {
    TreeSet<Double> depths = new TreeSet<>();
    before.machines().forEach(m -> depths.addAll(MachineReach.depths(m)));
    for (double depth : depths) {
      List<WayIn> old = was.waysIn(depth);
      List<WayIn> now = is.waysIn(depth);
      old.stream().filter(w -> !now.contains(w)).forEach(w -> boxes.add(w.box().bounds()));
      now.stream().filter(w -> !old.contains(w)).forEach(w -> boxes.add(w.box().bounds()));
    }
  }
}
