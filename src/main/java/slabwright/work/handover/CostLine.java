package slabwright.work.handover;

import java.math.BigDecimal;
import java.math.RoundingMode;
import slabwright.work.book.Figure;

/**
 * One line of the cost.
 *
 * @param quantity as shown where it comes from
 * @param source the sheet and row that shows it
 * @param unitPrice from the shop book only
 * @param amount rounded to the cent
 */
public record CostLine(
    String what,
    Figure<String> quantity,
    String source,
    Figure<BigDecimal> unitPrice,
    Figure<BigDecimal> amount) {

  /** A number of something, with the text that says what it counts. */
  record Count(BigDecimal number, String text) {}

  static CostLine of(
      String what, Figure<Count> count, String source, Figure<BigDecimal> unitPrice) {
    return new CostLine(
        what,
        count.map(Count::text),
        source,
        unitPrice,
        count.with(unitPrice, (c, p) -> c.number().multiply(p).setScale(2, RoundingMode.HALF_UP)));
  }
}
