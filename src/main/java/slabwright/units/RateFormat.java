package slabwright.units;

/** Coverage, film thickness, airflow, mass and work rates: exact factors and text for people. */
public final class RateFormat {
  /**
   * One square foot a US gallon in mm²/mm³. One m²/L is exactly 1, so the wet film in mm is one
   * over the coverage.
   */
  public static final double SQUARE_FOOT_PER_GALLON =
      QuantityFormat.SQUARE_FOOT_MM2 / QuantityFormat.US_GALLON_MM3;

  /** One cubic foot in m³, exactly. */
  public static final double CUBIC_FOOT_M3 = 0.3048 * 0.3048 * 0.3048;

  /** One avoirdupois pound in kg, exactly. */
  public static final double POUND_KG = 0.45359237;

  /** One mil (a thousandth of an inch) in mm, exactly. */
  public static final double MIL_MM = 0.0254;

  /** Of a step that a mass is shown in: less than this is an error of sums. */
  private static final double ROUNDING = 1e-6;

  private RateFormat() {}

  /** A coverage given in mm²/mm³ (which is m²/L). */
  public static String coverage(double squareMetresPerLitre, UnitSystem system) {
    return switch (system) {
      case FEET_INCHES ->
          QuantityFormat.number(squareMetresPerLitre / SQUARE_FOOT_PER_GALLON, 0) + " sq ft/gal";
      case METRIC -> QuantityFormat.number(squareMetresPerLitre, 1) + " m²/L";
    };
  }

  /** A film thickness given in mm: mils or micrometres. */
  public static String film(double mm, UnitSystem system) {
    return switch (system) {
      case FEET_INCHES -> QuantityFormat.number(mm / MIL_MM, 1) + " mil";
      case METRIC -> QuantityFormat.number(mm * 1000, 0) + " µm";
    };
  }

  /** An airflow given in m³/min. */
  public static String airflow(double cubicMetresPerMinute, UnitSystem system) {
    return switch (system) {
      case FEET_INCHES -> QuantityFormat.number(cubicMetresPerMinute / CUBIC_FOOT_M3, 0) + " cfm";
      case METRIC -> QuantityFormat.number(cubicMetresPerMinute * 60, 0) + " m³/h";
    };
  }

  /** A mass given in kg. */
  public static String mass(double kg, UnitSystem system) {
    return switch (system) {
      case FEET_INCHES -> QuantityFormat.number(kg / POUND_KG, 1) + " lb";
      case METRIC -> QuantityFormat.number(kg, 1) + " kg";
    };
  }

  /** A mass given in kg as a crew weighs it: ounces below one pound, grams below one kilogram. */
  public static String weighed(double kg, UnitSystem system) {
    return switch (system) {
      case FEET_INCHES ->
          Math.round(Math.abs(kg) / POUND_KG * 160) < 160
              ? QuantityFormat.number(kg / POUND_KG * 16, 1) + " oz"
              : QuantityFormat.number(kg / POUND_KG, 2) + " lb";
      case METRIC ->
          Math.round(Math.abs(kg) * 1000) < 1000
              ? QuantityFormat.number(kg * 1000, 0) + " g"
              : QuantityFormat.number(kg, 2) + " kg";
    };
  }

  /** What {@link #weighed} shows of a mass in kg, but never less than the mass: rounded up. */
  public static double weighedUp(double kg, UnitSystem system) {
    double step =
        switch (system) {
          case FEET_INCHES ->
              POUND_KG / (Math.round(Math.abs(kg) / POUND_KG * 160) < 160 ? 160 : 100);
          case METRIC -> Math.round(Math.abs(kg) * 1000) < 1000 ? 0.001 : 0.01;
        };
    return Math.ceil(kg / step - ROUNDING) * step;
  }

  /** A work rate given in mm² an hour. */
  public static String areaRate(double mm2PerHour, UnitSystem system) {
    return QuantityFormat.area(mm2PerHour, system) + "/h";
  }
}
