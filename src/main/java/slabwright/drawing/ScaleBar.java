package slabwright.drawing;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Bounds;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;

/**
 * A bar of four equal parts in round units of the floor, on paper and screen alike; it stays true
 * when a print shrinks.
 *
 * @param part length of one part, mm of paper
 * @param count of the unit in one part
 */
public record ScaleBar(double part, double count, String unit) {
  private static final int PARTS = 4;

  /**
   * A round length and how it is written.
   *
   * @param mm length of one part on the floor
   * @param count of the unit in one part
   */
  private record Step(double mm, double count, String unit) {}

  /** The longest bar at 1:{@code denominator} within the room (mm of paper). */
  public static ScaleBar within(double room, double denominator, UnitSystem units) {
    List<Step> steps = steps(units);
    Step step =
        steps.stream()
            .filter(s -> PARTS * s.mm() / denominator <= room)
            .findFirst()
            .orElse(steps.get(steps.size() - 1));
    return new ScaleBar(step.mm() / denominator, step.count(), step.unit());
  }

  /** Length of the whole bar, mm of paper. */
  public double length() {
    return PARTS * part;
  }

  /** The bar's inks, its left end at the point, {@code k} times the usual height. */
  public List<Ink> inks(Vec at, TextStyle style, double k) {
    double h = 1.6 * k;
    List<Ink> inks = new ArrayList<>();
    for (int i = 0; i <= PARTS; i++) {
      double x = at.x() + i * part;
      if (i % every(style) == 0) {
        inks.add(Text.middle(new Vec(x, at.y() - 1.4 * k), words(i), style));
      }
      if (i < PARTS && i % 2 == 0) {
        inks.add(Fill.of(Palette.INK, new Bounds(x, at.y(), x + part, at.y() + h)));
      }
    }
    Bounds rim = new Bounds(at.x(), at.y(), at.x() + length(), at.y() + h);
    inks.add(
        Stroke.rings(
            Pen.of(0.2, Palette.INK),
            List.of(Ring.rectangle(rim.minX(), rim.minY(), rim.maxX(), rim.maxY()))));
    return inks;
  }

  private String words(int parts) {
    String number = QuantityFormat.number(parts * count, count < 1 ? 2 : 0);
    return parts == PARTS ? number + " " + unit : number;
  }

  /** Every part, every second or only the ends have a number, as there is room for words. */
  private int every(TextStyle style) {
    double room = TextMeasure.width(words(PARTS), style) + 1;
    return part >= room ? 1 : 2 * part >= room ? 2 : PARTS;
  }

  /** Round steps, longest first. */
  private static List<Step> steps(UnitSystem units) {
    List<Step> steps = new ArrayList<>();
    if (units == UnitSystem.METRIC) {
      for (double m : new double[] {100, 50, 20, 10, 5, 2, 1, 0.5}) {
        steps.add(new Step(m * 1000, m, "m"));
      }
      for (double mm : new double[] {200, 100, 50, 20, 10, 5, 2}) {
        steps.add(new Step(mm, mm, "mm"));
      }
    } else {
      for (double ft : new double[] {500, 200, 100, 50, 20, 10, 5, 2, 1}) {
        steps.add(new Step(ft * 304.8, ft, "ft"));
      }
      for (double in : new double[] {6, 3, 2, 1, 0.5, 0.25}) {
        steps.add(new Step(in * 25.4, in, "in"));
      }
    }
    return steps;
  }
}
