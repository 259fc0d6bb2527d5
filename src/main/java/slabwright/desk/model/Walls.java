package slabwright.desk.model;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.OutlineEdit;
import slabwright.site.OutlinePiece;
import slabwright.site.Spot;

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
      Vec on = Segments.nearest(a, b, p);
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
