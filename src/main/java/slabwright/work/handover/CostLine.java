package slabwright.work.handover;

import java.math.BigDecimal;
import java.math.RoundingMode;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.RateFormat;
import slabwright.units.UnitSystem;
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
    LITRES,
    FEET,
    SQUARE_FEET,
    POUNDS,
    GALLONS;

    /** The same in feet and inches; what has no unit of length stays. */
    private Unit inFeet() {
      return switch (this) {
        case METRES -> FEET;
        case SQUARE_METRES -> SQUARE_FEET;
        case KILOGRAMS -> POUNDS;
        case LITRES -> GALLONS;
        default -> this;
      };
    }

    /** As it stands behind a bare number in a table; nothing for what is counted by the piece. */
    Message symbol() {
      return switch (this) {
        case HOURS -> Message.of("work.cost-line.symbol", "h");
        case DAYS, PERSON_DAYS -> Message.of("work.cost-line.symbol", "d");
        case PIECES, SETS -> Message.of("work.cost-line.symbol", "");
        case METRES -> Message.of("work.cost-line.symbol", "m");
        case SQUARE_METRES -> Message.of("work.cost-line.symbol", "m²");
        case KILOGRAMS -> Message.of("work.cost-line.symbol", "kg");
        case LITRES -> Message.of("work.cost-line.symbol", "L");
        case FEET -> Message.of("work.cost-line.symbol", "ft");
        case SQUARE_FEET -> Message.of("work.cost-line.symbol-of-square-feet");
        case POUNDS -> Message.of("work.cost-line.symbol", "lb");
        case GALLONS -> Message.of("work.cost-line.symbol", "gal");
      };
    }

    /** How much of the metric unit one of this is. */
    private double metric() {
      return switch (this) {
        case FEET -> 0.3048;
        case SQUARE_FEET -> QuantityFormat.SQUARE_FOOT_MM2 / 1e6;
        case POUNDS -> RateFormat.POUND_KG;
        case GALLONS -> QuantityFormat.US_GALLON_MM3 / QuantityFormat.LITRE_MM3;
        default -> 1;
      };
    }
  }

  /**
   * A number of something.
   *
   * @param number to two decimals, or whole; more where it is rounded up in another unit
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

    /** The same as it is told in the units of the job. */
    Count in(UnitSystem units) {
      Unit told = units == UnitSystem.METRIC ? unit : unit.inFeet();
      return told == unit ? this : of(number.doubleValue() / told.metric(), told);
    }

    /** The same as it goes on the van: whole feet or metres, never less than is needed. */
    Count loaded() {
      return switch (unit) {
        case FEET, SQUARE_FEET, METRES, SQUARE_METRES ->
            new Count(number.setScale(0, RoundingMode.CEILING), unit);
        default -> this;
      };
    }

    /** A price of one of this as a price of one of the other. */
    BigDecimal price(BigDecimal each, Count told) {
      return told.unit() == unit
          ? each
          : BigDecimal.valueOf(each.doubleValue() * told.unit().metric())
              .setScale(4, RoundingMode.HALF_UP);
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
        case FEET -> Message.of("work.cost-line-builder.feet", number);
        case SQUARE_FEET -> Message.of("work.cost-line-builder.square-feet", number);
        case POUNDS -> Message.of("work.cost-line-builder.pounds", number);
        case GALLONS -> Message.of("work.cost-line-builder.gallons", number);
      };
    }
  }

  /** The amount is of the count and price as the book has them; both are shown in the units. */
  static CostLine of(
      Message what,
      Figure<Count> count,
      Message source,
      Figure<BigDecimal> unitPrice,
      UnitSystem units) {
    return new CostLine(
        what,
        count.map(c -> c.in(units).text()),
        source,
        count.isKnown() ? count.with(unitPrice, (c, p) -> c.price(p, c.in(units))) : unitPrice,
        count.with(unitPrice, (c, p) -> c.number().multiply(p).setScale(2, RoundingMode.HALF_UP)));
  }
}
