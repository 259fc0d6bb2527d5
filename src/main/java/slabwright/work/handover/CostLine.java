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

  /** What a line counts. */
  enum Unit {
    HOURS,
    DAYS,
    PERSON_DAYS,
    PIECES,
    SETS,
    METRES,
    SQUARE_METRES,
    KILOGRAMS,
    LITRES
  }

  /**
   * A number of something.
   *
   * @param number to two decimals, or whole
   */
  record Count(BigDecimal number, Unit unit) {
    static Count whole(long n, Unit unit) {
      return new Count(BigDecimal.valueOf(n), unit);
    }

    /** To two decimals, halves up. */
    static Count of(double number, Unit unit) {
      return new Count(BigDecimal.valueOf(number).setScale(2, RoundingMode.HALF_UP), unit);
    }

    Count plus(Count other) {
      return new Count(number.add(other.number()), unit);
    }

    Message text() {
      return switch (unit) {
        case HOURS -> Message.of("work.cost-line-builder.hours", number);
        case DAYS -> Message.of("work.cost-line-builder.days", number);
        case PERSON_DAYS -> Message.of("work.cost-line-builder.person-days", number);
        case PIECES -> Message.of("work.cost-line-builder.pieces", number);
        case SETS -> Message.of("work.cost-line-builder.sets", number);
        case METRES -> Message.of("work.cost-line-builder.metres", number);
        case SQUARE_METRES -> Message.of("work.cost-line-builder.square-metres", number);
        case KILOGRAMS -> Message.of("work.cost-line-builder.kilograms", number);
        case LITRES -> Message.of("work.cost-line-builder.litres", number);
      };
    }
  }

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
