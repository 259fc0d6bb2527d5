package slabwright.sheets.plan;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Symbol;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;

/**
 * Marks on the middle of the strip that two tiles share: cut one print along the dashed line, lay
 * it on the other, and the rings meet.
 */
final class JoinMarks {
  private JoinMarks() {}

  static List<Ink> of(PlanTiling plan, int column, int row) {
    List<Ink> inks = new ArrayList<>();
    Bounds f = plan.field();
    double in = PlanTiling.SHARED / 2;
    if (column > 0) {
      upright(inks, f.minX() + in, f);
    }
    if (column < plan.across() - 1) {
      upright(inks, f.maxX() - in, f);
    }
    if (row > 0) {
      level(inks, f.minY() + in, f);
    }
    if (row < plan.down() - 1) {
      level(inks, f.maxY() - in, f);
    }
    return inks;
  }

  private static void upright(List<Ink> inks, double x, Bounds f) {
    join(inks, new Vec(x, f.minY()), new Vec(x, f.maxY()));
  }

  private static void level(List<Ink> inks, double y, Bounds f) {
    join(inks, new Vec(f.minX(), y), new Vec(f.maxX(), y));
  }

  private static void join(List<Ink> inks, Vec from, Vec to) {
    inks.add(Stroke.line(Pen.of(0.18, Palette.SOFT).dashed(6, 3), from, to));
    for (double t : new double[] {0.1, 0.5, 0.9}) {
      inks.add(Symbol.of(Symbol.Kind.JOIN, from.towards(to, t), 6, Palette.SOFT));
    }
  }
}
