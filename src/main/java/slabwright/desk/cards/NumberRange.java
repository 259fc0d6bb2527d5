package slabwright.desk.cards;

import slabwright.units.Parsed;
import slabwright.units.Quantity;

/** Plain numbers between two ends. */
record NumberRange(double low, double high) {
  Parsed<Double> read(String text) {
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
            + Quantity.number(low, 0)
            + " and "
            + Quantity.number(high, 0)
            + ".");
  }
}
