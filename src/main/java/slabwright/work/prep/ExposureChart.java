package slabwright.work.prep;

import slabwright.site.Exposure;
import slabwright.units.Message;

/**
 * What an exposure is called in the two published charts. The old chart (A cream, B salt and pepper
 * 1/16 in, C medium 1/8 in, D large 1/4 in) was revised in November 2017 by the polishing council
 * of the concrete contractors' society into three classes; both are in use, so both are given.
 *
 * @param before2017 class and depth
 * @param since2017 class and share of the surface
 */
public record ExposureChart(Message before2017, Message since2017) {
  public static ExposureChart of(Exposure exposure) {
    return switch (exposure) {
      case CREAM ->
          new ExposureChart(
              Message.of("work.exposure-chart.a-cream"),
              Message.of("work.exposure-chart.a-cement-fines-fines-fine"));
      case FINE ->
          new ExposureChart(
              Message.of("work.exposure-chart.b-salt-and-pepper-in"),
              Message.of("work.exposure-chart.b-fine-aggregate-fines-and"));
      case MEDIUM ->
          new ExposureChart(
              Message.of("work.exposure-chart.c-medium-in"),
              Message.of("work.exposure-chart.between-b-and-c-the"));
      case COARSE ->
          new ExposureChart(
              Message.of("work.exposure-chart.d-large-in"),
              Message.of("work.exposure-chart.c-coarse-aggregate-fines-and"));
    };
  }
}
