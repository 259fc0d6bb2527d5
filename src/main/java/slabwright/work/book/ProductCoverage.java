package slabwright.work.book;

import java.math.BigDecimal;
import java.util.List;
import slabwright.units.Message;

/**
 * How far a product goes.
 *
 * @param coverage mm²/mm³ for one coat, which is m²/L
 * @param loss share that stays in tools and cans or drifts away
 * @param solids share of the volume that stays as dry film
 * @param kits smallest first
 * @param splits whether an unmixed kit may be used in part
 * @param gritPerVolume kg/mm³ of grit additive the shop stirs in
 * @param kgPrice of a kilogram, for what is bought by weight
 */
public record ProductCoverage(
    Figure<Integer> coats,
    Figure<Double> coverage,
    Figure<Double> loss,
    Figure<Double> solids,
    Figure<List<Kit>> kits,
    Figure<Boolean> splits,
    Figure<Double> gritPerVolume,
    Figure<BigDecimal> kgPrice) {

  static ProductCoverage read(BookSection s) {
    return new ProductCoverage(
        s.whole("coats"),
        s.number("coverage", BookDimension.COVERAGE),
        s.number("loss", BookDimension.SHARE),
        s.number("volume_solids", BookDimension.SHARE),
        s.list("kits", Message.of("work.product-coverage.kits"), Kit::read)
            .flatMap(ProductCoverage::some),
        s.yes("kits_may_be_split"),
        s.number("grit", BookDimension.MASS_PER_VOLUME),
        s.price("price_a_kg"));
  }

  private static Figure<List<Kit>> some(List<Kit> kits) {
    return kits.isEmpty()
        ? Figure.refused(Message.of("work.product-coverage.a-product-is-sold-in"))
        : Figure.known(kits);
  }
}
