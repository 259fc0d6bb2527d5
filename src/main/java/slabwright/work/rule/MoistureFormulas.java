package slabwright.work.rule;

/** Moisture in the slab: the arithmetic of ASTM F1869 and F2170. */
public final class MoistureFormulas {
  /** Commonly specified limit, lb per 1000 ft² in 24 h. */
  public static final double COMMON_EMISSION_LIMIT = 3;

  /** Relative humidity in the slab that is commonly asked for where a maker gives no figure, %. */
  public static final double COMMON_HUMIDITY_LIMIT = 75;

  private static final double GRAMS_PER_POUND = 453.592;

  private MoistureFormulas() {}

  /**
   * Moisture emission in lb per 1000 ft² in 24 h (ASTM F1869).
   *
   * @param grams gained by the dish
   * @param squareFeet under the dome
   * @param hours of exposure, 60 to 72
   */
  public static double emission(double grams, double squareFeet, double hours) {
    return 24 * 1000 * grams / (GRAMS_PER_POUND * squareFeet * hours);
  }

  /** How deep an F2170 probe sits in a slab that dries from one or from both sides. */
  public static double probeDepth(double slabMm, boolean driesBothSides) {
    return slabMm * (driesBothSides ? 0.2 : 0.4);
  }

  /** How many F2170 probes: three for the first 1000 ft², one for each further 1000 ft² begun. */
  public static int probes(double squareFeet) {
    int further = (int) Math.ceil(Math.max(0, squareFeet - 1000) / 1000 - 1e-9);
    return 3 + further;
  }
}
