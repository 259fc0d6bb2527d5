package slabwright.work.handover;

import java.math.BigDecimal;
import java.math.RoundingMode;
import slabwright.units.Message;
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
    Message what,
    Figure<Message> quantity,
    Message source,
    Figure<BigDecimal> unitPrice,
    Figure<BigDecimal> amount) {

  /** A number of something, with the text that says what it counts. */
  record Count(BigDecimal number, Message text) {}

  static CostLine of(
      Message what, Figure<Count> count, Message source, Figure<BigDecimal> unitPrice) {
    return new CostLine(
        what,
        count.map(Count::text),
        source,
        unitPrice,
        count.with(unitPrice, (c, p) -> c.number().multiply(p).setScale(2, RoundingMode.HALF_UP)));
  }
}
