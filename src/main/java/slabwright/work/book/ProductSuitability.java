package slabwright.work.book;

/**
 * Where a product may go, from its data sheet.
 *
 * @param slabHumidity highest relative humidity in the slab, a share (ASTM F2170)
 * @param emission highest moisture emission, lb per 1000 ft² in 24 h (ASTM F1869)
 * @param breathing whether water vapour gets through
 */
public record ProductSuitability(
    Figure<Double> slabHumidity, Figure<Double> emission, Figure<Boolean> breathing) {
  static ProductSuitability read(BookSection s) {
    return new ProductSuitability(
        s.number("highest_slab_humidity", BookDimension.SHARE),
        s.number("highest_emission", BookDimension.NUMBER),
        s.yes("breathing"));
  }
}
