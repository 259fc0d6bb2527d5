package slabwright.desk.cards;

import slabwright.units.Parsed;
import slabwright.units.QuantityFormat;

/** Plain numbers between two ends. */
public record NumberRange(double low, double high) {
  public Parsed<Double> read(String text) {
    try {
      double v =
          Double.parseDouble(text.replace("°", "").replace("%", "").replace(',', '.').strip());
      if (v >= low && v <= high) {
        return Parsed.ok(v);
      }
    } catch (NumberFormatException e) {
      return Parsed.bad("\"" + text + "\" is not a number.");
    }
    return Parsed.bad(
        "Write a number between "
            + QuantityFormat.number(low, 0)
            + " and "
            + QuantityFormat.number(high, 0)
            + ".");
  }
}
