package slabwright.desk.cards;

import slabwright.units.Parsed;
import slabwright.units.QuantityFormat;
import slabwright.words.Words;

/** Plain numbers between two ends. */
public record NumberRange(double low, double high) {
  public Parsed<Double> read(String text, Words words) {
    try {
      double v =
          Double.parseDouble(text.replace("°", "").replace("%", "").replace(',', '.').strip());
      if (v >= low && v <= high) {
        return Parsed.ok(v);
      }
    } catch (NumberFormatException e) {
      return Parsed.bad(words.say("desk.cards.number-range.is-not-a-number", text));
    }
    return Parsed.bad(
        words.say(
            "desk.cards.number-range.write-a-number-between-and",
            QuantityFormat.number(low, 0),
            QuantityFormat.number(high, 0)));
  }
}
