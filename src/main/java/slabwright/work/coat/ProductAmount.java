package slabwright.work.coat;

/** How much of a product a floor takes. */
final class ProductAmount {
  private ProductAmount() {}

  /** Volume in mm³: area × coats / coverage / (1 − loss). */
  public static double volume(double mm2, int coats, double coverage, double loss) {
    if (!(coverage > 0) || loss < 0 || loss >= 1) {
      throw new IllegalArgumentException("coverage is above 0 and the loss from 0 to under 1");
    }
    return mm2 * coats / coverage / (1 - loss);
  }

  /** The floor in mm² that a volume does in one coat. */
  public static double covered(double mm3, double coverage, double loss) {
    return mm3 * coverage * (1 - loss);
  }
}
