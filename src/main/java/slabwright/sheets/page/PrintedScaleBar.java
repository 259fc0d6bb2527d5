package slabwright.sheets.page;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Fill;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.drawing.TextStyle;
import slabwright.shape.Bounds;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;

/** A bar of four equal parts in round units of the floor, which stays true when a print shrinks. */
final class PrintedScaleBar {
  private static final int PARTS = 4;

  /**
   * A round length and how it is written.
   *
   * @param mm length of one part on the floor
   * @param count of the unit in one part
   */
  private record Step(double mm, double count, String unit) {}

  private PrintedScaleBar() {}

  /** The bar's inks, its left end at the point, no longer than {@code room} mm of paper. */
  static List<Ink> at(Vec at, Scale scale, UnitSystem units, double room, TypeSizes type) {
    Step step = step(scale, units, room);
    double part = step.mm() / scale.denominator();
    double h = 1.6 * type.k();
    List<Ink> inks = new ArrayList<>();
    TextStyle style = type.packet() ? type.small() : TextStyle.plain(2.7 * type.k());
    for (int i = 0; i <= PARTS; i++) {
      double x = at.x() + i * part;
      String count = QuantityFormat.number(i * step.count(), step.count() < 1 ? 2 : 0);
      String words = i == PARTS ? count + " " + step.unit() : count;
      if (i % every(step, part, style) == 0) {
        inks.add(Text.middle(new Vec(x, at.y() - 1.4 * type.k()), words, style));
      }
      if (i < PARTS && i % 2 == 0) {
        inks.add(Fill.of(Palette.INK, new Bounds(x, at.y(), x + part, at.y() + h)));
      }
    }
    Ring rim = Ring.rectangle(at.x(), at.y(), at.x() + PARTS * part, at.y() + h);
    inks.add(Stroke.rings(Pen.of(0.2, Palette.INK), List.of(rim)));
    return inks;
  }

  /** Every part, every second or only the ends have a number, as there is room for words. */
  private static int every(Step step, double part, TextStyle style) {
    String last =
        QuantityFormat.number(PARTS * step.count(), step.count() < 1 ? 2 : 0) + " " + step.unit();
    double room = TextMeasure.width(last, style) + 1;
    return part >= room ? 1 : 2 * part >= room ? 2 : PARTS;
  }

  private static Step step(Scale scale, UnitSystem units, double room) {
    List<Step> steps = steps(units);
    return steps.stream()
        .filter(s -> PARTS * s.mm() / scale.denominator() <= room)
        .findFirst()
        .orElse(steps.get(steps.size() - 1));
  }

  /** Round steps, longest first. */
  private static List<Step> steps(UnitSystem units) {
    List<Step> steps = new ArrayList<>();
    if (units == UnitSystem.METRIC) {
      for (double m : new double[] {10, 5, 2, 1, 0.5}) {
        steps.add(new Step(m * 1000, m, "m"));
      }
      for (double mm : new double[] {200, 100, 50, 20, 10, 5, 2}) {
        steps.add(new Step(mm, mm, "mm"));
      }
    } else {
      for (double ft : new double[] {20, 10, 5, 2, 1}) {
        steps.add(new Step(ft * 304.8, ft, "ft"));
      }
      for (double in : new double[] {6, 3, 2, 1, 0.5, 0.25}) {
        steps.add(new Step(in * 25.4, in, "in"));
      }
    }
    return steps;
  }
}
