package slabwright.units;

import java.util.Locale;

/** Areas, volumes, temperatures and angles: exact factors and the text that people read. */
public final class QuantityFormat {
  /** One square foot in mm², exactly (304.8²). */
  public static final double SQUARE_FOOT_MM2 = 304.8 * 304.8;

  /** One US gallon in mm³, exactly (231 in³; NIST Handbook 44, App. C). */
  public static final double US_GALLON_MM3 = 231 * 25.4 * 25.4 * 25.4;

  /** One litre in mm³. */
  public static final double LITRE_MM3 = 1e6;

  private QuantityFormat() {}

  /** An area in sq ft or m². */
  public static String area(double mm2, UnitSystem system) {
    return switch (system) {
      case FEET_INCHES -> number(mm2 / SQUARE_FOOT_MM2, 1) + " sq ft";
      case METRIC -> number(mm2 / 1e6, 2) + " m²";
    };
  }

  /** An area as one speaks of it: whole sq ft, or m² to a tenth. */
  public static String wholeArea(double mm2, UnitSystem system) {
    return switch (system) {
      case FEET_INCHES -> number(mm2 / SQUARE_FOOT_MM2, 0) + " sq ft";
      case METRIC -> number(mm2 / 1e6, 1) + " m²";
    };
  }

  /** A small area: mm² below 1 cm², else cm²; or sq in. */
  public static String smallArea(double mm2, UnitSystem system) {
    if (system == UnitSystem.FEET_INCHES) {
      double inches = mm2 / (25.4 * 25.4);
      return number(inches, inches < 1 ? 3 : 1) + " sq in";
    }
    return mm2 < 100 ? number(mm2, 1) + " mm²" : number(mm2 / 100, mm2 < 1000 ? 1 : 0) + " cm²";
  }

  /** A running length: whole feet or metres to a tenth, for edges and rolls. */
  public static String run(double mm, UnitSystem system) {
    return switch (system) {
      case FEET_INCHES -> number(mm / 304.8, 1) + " ft";
      case METRIC -> number(mm / 1000, 2) + " m";
    };
  }

  /**
   * A volume: US gallons or fluid ounces below a quarter gallon, litres or millilitres below one
   * litre.
   */
  public static String volume(double mm3, UnitSystem system) {
    double gallons = mm3 / US_GALLON_MM3;
    return switch (system) {
      case FEET_INCHES ->
          Math.abs(gallons) < 0.25
              ? number(gallons * 128, 1) + " fl oz"
              : number(gallons, 2) + " gal";
      case METRIC ->
          Math.abs(mm3) < LITRE_MM3
              ? number(mm3 / 1000, 0) + " mL"
              : number(mm3 / LITRE_MM3, 2) + " L";
    };
  }

  /** A temperature given in °C. */
  public static String temperature(double celsius, UnitSystem system) {
    return switch (system) {
      case FEET_INCHES -> number(celsius * 9 / 5 + 32, 0) + " °F";
      case METRIC -> number(celsius, 0) + " °C";
    };
  }

  /** A number with {@code decimals} places and commas between thousands. */
  public static String number(double value, int decimals) {
    String text = String.format(Locale.ROOT, "%,." + decimals + "f", value);
    return text.matches("-[0.,]*") ? text.substring(1) : text;
  }
}
