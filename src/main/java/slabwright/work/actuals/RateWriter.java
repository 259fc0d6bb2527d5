package slabwright.work.actuals;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Duration;
import slabwright.units.QuantityFormat;
import slabwright.units.RateFormat;
import slabwright.units.UnitSystem;
import slabwright.work.book.ShopBookText;

/**
 * What really happened, written back: each gives a new shop book and leaves the old one and all
 * comments as they are.
 */
final class RateWriter {
  private static final MathContext FOUR_DIGITS = new MathContext(4);

  /** Keys of the shop book. */
  static final String MACHINE_RATE = ShopBookText.key("machine_rate");

  static final String HAND_RATE = ShopBookText.key("hand_rate");
  static final String LAYING_RATE = ShopBookText.key("laying_rate");

  private final UnitSystem units;

  /** Writes values in the units of a system. */
  public RateWriter(UnitSystem units) {
    this.units = units;
  }

  /**
   * The coverage that an amount really gave.
   *
   * @param mm2 floor done
   * @param usedMm3 what was poured, all coats, losses included
   * @param loss share that the book says is lost
   */
  public ShopBookText coverage(
      ShopBookText book, String product, double mm2, int coats, double usedMm3, double loss) {
    double coverage = mm2 * coats / (usedMm3 * (1 - loss));
    String value =
        units == UnitSystem.FEET_INCHES
            ? number(coverage / RateFormat.SQUARE_FOOT_PER_GALLON) + " ft2/gal"
            : number(coverage) + " m2/L";
    return book.with("product", product, "coverage", value);
  }

  /** The rate of a grinding pass by machine, from the floor in mm² and the time it took. */
  public ShopBookText machineRate(ShopBookText book, String grit, double mm2, Duration took) {
    return book.with("grit", grit, MACHINE_RATE, areaRate(mm2, took));
  }

  /** The rate of a grinding pass by hand, from the floor in mm² and one person's time. */
  public ShopBookText handRate(ShopBookText book, String grit, double mm2, Duration took) {
    return book.with("grit", grit, HAND_RATE, areaRate(mm2, took));
  }

  /** The rate one person laid a product at. */
  public ShopBookText layingRate(
      ShopBookText book, String product, double mm2, int people, Duration took) {
    return book.with("product", product, LAYING_RATE, areaRate(mm2, took.multipliedBy(people)));
  }

  private String areaRate(double mm2, Duration took) {
    if (took.isZero() || took.isNegative()) {
      throw new IllegalArgumentException("work takes time");
    }
    double perHour = mm2 / (took.toMillis() / 3.6e6);
    return units == UnitSystem.FEET_INCHES
        ? number(perHour / QuantityFormat.SQUARE_FOOT_MM2) + " ft2/h"
        : number(perHour / 1e6) + " m2/h";
  }

  private static String number(double v) {
    return BigDecimal.valueOf(v).round(FOUR_DIGITS).stripTrailingZeros().toPlainString();
  }
}
