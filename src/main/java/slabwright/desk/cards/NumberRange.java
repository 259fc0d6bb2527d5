package slabwright.desk.cards;

import java.util.function.DoubleFunction;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.Result;

/** Plain numbers between two ends. */
public record NumberRange(double low, double high) {
  /** A number that was read, unless it lies beyond the ends, which are then shown. */
  Result<Double> checked(double v, DoubleFunction<String> shown) {
    return v >= low && v <= high
        ? Result.ok(v)
        : Result.refused(
            Message.of(
                "desk.cards.number-range.write-a-number-between-and",
                shown.apply(low),
                shown.apply(high)));
  }

  public Result<Double> read(String text) {
    try {
      double v =
          Double.parseDouble(text.replace("°", "").replace("%", "").replace(',', '.').strip());
      if (v >= low && v <= high) {
        return Result.ok(v);
      }
    } catch (NumberFormatException e) {
      return Result.refused(Message.of("desk.cards.number-range.is-not-a-number", text));
    }
    return Result.refused(
        Message.of(
            "desk.cards.number-range.write-a-number-between-and",
            QuantityFormat.number(low, 0),
            QuantityFormat.number(high, 0)));
  }
}
