package slabwright.work.book;

import java.math.BigDecimal;
import java.time.Duration;

/**
 * How fast the shop lays and dyes a stencil: rates of areas in mm² an hour, of lengths in mm an
 * hour, all for one person; setting out takes its time with everybody who lays film.
 */
public record InlayRates(
    Figure<Double> layStencil,
    Figure<Double> press,
    Figure<Double> skirt,
    Figure<Double> mist,
    Figure<Double> mistFastest,
    Figure<Double> pullUp,
    Figure<Duration> tackTest,
    Figure<Duration> settingOut,
    Figure<Duration> samplePanel,
    Figure<BigDecimal> vinylPriceArea) {

  static InlayRates read(BookSection s) {
    return new InlayRates(
        s.number("lay_stencil", BookDimension.AREA_RATE),
        s.number("press_edges", BookDimension.RUN_RATE),
        s.number("lay_skirt", BookDimension.AREA_RATE),
        s.number("mist_coat", BookDimension.AREA_RATE),
        s.number("fastest_mist_coat", BookDimension.AREA_RATE),
        s.number("pull_up", BookDimension.AREA_RATE),
        s.time("tack_test"),
        s.time("setting_out"),
        s.time("sample_panel"),
        s.price("price_of_vinyl_a_m2"));
  }
}
