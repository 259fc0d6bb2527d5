package slabwright.floor;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.OutlineShape;

/**
 * The box outside a doorway in which a machine stands before it comes in: as wide as the opening is
 * clear, in its middle, and of a given depth. A machine whose middle fits anywhere in it has come
 * as far as the door.
 */
record WayIn(Doorway doorway, Region box) {
  /** Keeps the box off walls beside the doorway, which it must not open. */
  private static final double OFF_WALL = 1;

  static List<WayIn> of(FloorArea area, Region gross, double depth, double tolerance) {
    OutlineShape shape = OutlineShape.of(area.outline(), tolerance);
    double side = shape.floorOnLeft() ? -1 : 1;
    return area.doorways().stream()
        .filter(Doorway::wayIn)
        .filter(d -> shape.doorway(d).points().size() > 1)
        .map(d -> of(d, shape.doorway(d), side, gross, depth))
        .toList();
  }

  private static WayIn of(Doorway d, Line opening, double side, Region gross, double depth) {
    Vec first = opening.points().get(0);
    Vec last = opening.points().get(opening.points().size() - 1);
    Vec along = last.minus(first).unit();
    Vec out = along.left().times(side * depth);
    double taken = Math.max(0, d.width().mm() - d.clear()) / 2;
    List<Vec> corners = new ArrayList<>(opening.points());
    if (taken > 0) {
      corners =
          new ArrayList<>(List.of(first.plus(along.times(taken)), last.minus(along.times(taken))));
    }
    double narrower = Math.max(taken, OFF_WALL);
    corners.add(last.plus(out).minus(along.times(narrower)));
    corners.add(first.plus(out).plus(along.times(narrower)));
    Region whole = Region.of(new Ring(corners));
    Region inTheWay = whole.intersect(gross);
    Region box = inTheWay.isEmpty() ? whole : whole.minus(inTheWay.offset(OFF_WALL, OFF_WALL / 2));
    return new WayIn(d, box);
  }
}
