package slabwright.units;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;

/**
 * Units of length and their exact size in mm (international foot, 0.3048 m; NIST Handbook 44, App.
 * C).
 */
enum LengthUnit {
  MM("1", "mm", "millimetre", "millimetres", "millimeter", "millimeters"),
  CM("10", "cm", "centimetre", "centimetres", "centimeter", "centimeters"),
  M("1000", "m", "metre", "metres", "meter", "meters"),
  KM("1000000", "km", "kilometre", "kilometres", "kilometer", "kilometers"),
  INCH("25.4", "in", "inch", "inches", "\"", "in."),
  FOOT("304.8", "ft", "foot", "feet", "'", "ft."),
  YARD("914.4", "yd", "yard", "yards");

  private final BigDecimal mm;

  /** Every spelling, each with a bar on both sides. */
  private final String names;

  LengthUnit(String mm, String... names) {
    this.mm = new BigDecimal(mm);
    this.names = "|" + String.join("|", names) + "|";
  }

  /** The exact number of millimetres in one of this unit. */
  public BigDecimal mm() {
    return mm;
  }

  boolean isMetric() {
    return compareTo(KM) <= 0;
  }

  static Optional<LengthUnit> named(String word) {
    String lower = word.toLowerCase(Locale.ROOT);
    for (LengthUnit unit : values()) {
      if (unit.names.contains("|" + lower + "|")) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }
}
