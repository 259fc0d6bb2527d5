package slabwright.desk.model.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Line;
import slabwright.shape.SegmentGeometry;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.OutlinePiece;
import slabwright.site.OutlineShape;
import slabwright.site.Spot;
import slabwright.site.edit.OutlineEdit;
import slabwright.units.Length;

/** Walls slid, lengthened and measured along. */
public final class Walls {
  private Walls() {}

  /** How far along a chain the place nearest to the point lies, mm. */
  public static double along(Line line, Vec p) {
    double best = Double.POSITIVE_INFINITY;
    double found = 0;
    double at = 0;
    for (int i = 0; i + 1 < line.points().size(); i++) {
      Vec a = line.points().get(i);
      Vec b = line.points().get(i + 1);
      Vec on = SegmentGeometry.nearest(a, b, p);
      if (on.distanceTo(p) < best) {
        best = on.distanceTo(p);
        found = at + a.distanceTo(on);
      }
      at += a.distanceTo(b);
    }
    return found;
  }

  public static Vec start(FloorArea area, int wall) {
    return area.outline().get(wall).from().vec();
  }

  public static Vec end(FloorArea area, int wall) {
    return area.outline().get((wall + 1) % area.outline().size()).from().vec();
  }

  /**
   * The wall with another length: one end moves along the wall.
   *
   * @param far whether the wall's last corner moves, else its first
   * @param whole whether the adjoining wall moves along as a whole, so that corners stay square
   */
  public static OutlineEdit lengthened(
      FloorArea area, int wall, double length, boolean far, boolean whole) {
    int n = area.outline().size();
    Vec a = start(area, wall);
    Vec b = end(area, wall);
    Vec by = b.minus(a).unit().times(length - a.distanceTo(b)).times(far ? 1 : -1);
    int moved = far ? (wall + 1) % n : wall;
    int other = far ? (wall + 2) % n : (wall + n - 1) % n;
    return new OutlineEdit.SetOutline(
        area.id(), shifted(area, by, whole ? List.of(moved, other) : List.of(moved)));
  }

  /**
   * A doorway once more in a wall, at the first place along it where it fits: beside where it was,
   * then beside each doorway that is there. Where none is long enough it lies at the wall's start.
   * It leads nowhere yet: the other side of the first is taken.
   */
  public static Doorway fitted(FloorArea area, List<Doorway> all, Doorway d, String id, int wall) {
    double long1 = OutlineShape.of(area.outline(), 1).pieces().get(wall).length();
    List<Doorway> there = all.stream().filter(o -> o.piece() == wall).toList();
    List<Double> starts = new ArrayList<>();
    starts.add(d.offset().mm());
    there.forEach(o -> starts.add(o.offset().mm() + o.width().mm() + PasteOp.STEP));
    starts.add(0.0);
    double at =
        starts.stream()
            .filter(s -> s + d.width().mm() <= long1)
            .filter(s -> there.stream().noneMatch(o -> overlap(o, s, d.width().mm())))
            .findFirst()
            .orElse(0.0);
    Doorway.Passage passage = new Doorway.Passage(Optional.empty(), d.passage().clear());
    return new Doorway(id, d.name(), wall, Length.mm(at), d.width(), d.wayIn(), passage);
  }

  private static boolean overlap(Doorway o, double start, double width) {
    double first = o.offset().mm();
    return start < first + o.width().mm() && first < start + width;
  }

  /** A doorway slid along its wall, as far as the wall goes. */
  public static Doorway slid(FloorArea area, Doorway d, double by) {
    double most = OutlineShape.of(area.outline(), 1).pieces().get(d.piece()).length();
    double at = Math.max(0, Math.min(most - d.width().mm(), d.offset().mm() + by));
    return d.at(d.piece(), Length.mm(at));
  }

  /** The outline with some corners shifted. */
  public static List<OutlinePiece> shifted(FloorArea area, Vec by, List<Integer> corners) {
    List<OutlinePiece> next = new ArrayList<>(area.outline());
    for (int i : corners) {
      OutlinePiece p = next.get(i);
      next.set(i, new OutlinePiece(Spot.of(p.from().vec().plus(by)), p.kind(), p.rise()));
    }
    return next;
  }
}
