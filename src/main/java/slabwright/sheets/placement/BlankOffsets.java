package slabwright.sheets.placement;

import slabwright.drawing.Palette;
import slabwright.drawing.Symbol;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.plan.PlanComposer;

/** How far a blank and its middle lie from the outline, to the left and below on the sheet. */
final class BlankOffsets {
  private final Region floor;
  private final Vec middle;
  private final Bounds blank;

  BlankOffsets(Region floor, Vec middle, Bounds blank) {
    this.floor = floor;
    this.middle = middle;
    this.blank = blank;
  }

  /** The first point of the boundary in the direction; the point itself when there is none. */
  private Vec hit(Vec at, Vec way) {
    Vec best = at;
    double nearest = Double.POSITIVE_INFINITY;
    for (Ring ring : floor.rings()) {
      for (int i = 0; i < ring.points().size(); i++) {
        Vec a = ring.points().get(i);
        Vec side = ring.points().get((i + 1) % ring.points().size()).minus(a);
        double cross = way.cross(side);
        double t = a.minus(at).cross(side) / cross;
        double s = a.minus(at).cross(way) / cross;
        if (cross != 0 && t > 0 && s >= 0 && s <= 1 && t < nearest) {
          nearest = t;
          best = at.plus(way.times(t));
        }
      }
    }
    return best;
  }

  private Vec left(double y) {
    return hit(new Vec(blank.minX(), y), new Vec(-1, 0));
  }

  private Vec below(double x) {
    return hit(new Vec(x, blank.minY()), new Vec(0, -1));
  }

  /** Draws the blank's distance to both walls, wherever along its sides there is room. */
  void draw(PlanComposer sketch, SheetContext context) {
    for (double t : new double[] {0.5, 0.3, 0.7, 0.15, 0.85}) {
      double y = blank.minY() + t * blank.height();
      if (draw(sketch, context, left(y), new Vec(blank.minX(), y))) {
        break;
      }
    }
    for (double t : new double[] {0.5, 0.25, 0.75, 0.05, 0.95}) {
      double x = blank.minX() + t * blank.width();
      if (draw(sketch, context, below(x), new Vec(x, blank.minY()))) {
        break;
      }
    }
    sketch.placeSign(Symbol.of(Symbol.Kind.POINT, middle, 4, Palette.RED));
  }

  private static boolean draw(PlanComposer sketch, SheetContext context, Vec wall, Vec blank) {
    String words = context.length(wall.distanceTo(blank));
    return sketch.placeDimensionAt(wall, blank, words)
        || sketch.placeDimensionAt(blank, wall, words);
  }

  String sentence(SheetContext context) {
    Vec left = hit(middle, new Vec(-1, 0));
    Vec below = hit(middle, new Vec(0, -1));
    return context.say(
        "sheets.blank-offsets.middle",
        context.length(left.distanceTo(middle)),
        context.length(below.distanceTo(middle)));
  }
}
