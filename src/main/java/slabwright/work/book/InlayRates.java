package slabwright.work.book;

import java.math.BigDecimal;
import java.time.Duration;

/**
 * How fast the shop lays and dyes a stencil: rates of areas in mm² an hour, of lengths in mm an
 * hour, all for one person.
 */
public record InlayRates(
    Figure<Double> layStencil,
    Figure<Double> press,
    Figure<Double> skirt,
    Figure<Double> mist,
    Figure<Double> mistFastest,
    Figure<Double> pullUp,
    Figure<Duration> tackTest,
    Figure<Duration> samplePanel,
    Figure<BigDecimal> vinylPriceArea) {

  static InlayRates read(BookSection s) {
    return new InlayRates(
        s.number("lay stencil", BookDimension.AREA_RATE),
        s.number("press edges", BookDimension.RUN_RATE),
        s.number("lay skirt", BookDimension.AREA_RATE),
        s.number("mist coat", BookDimension.AREA_RATE),
        s.number("fastest mist coat", BookDimension.AREA_RATE),
        s.number("pull up", BookDimension.AREA_RATE),
        s.time("tack test"),
        s.time("sample panel"),
        s.price("price of vinyl a m2"));
  }
}
