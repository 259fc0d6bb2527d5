package slabwright.work.prep;

import slabwright.site.Exposure;

/**
 * What an exposure is called in the two published charts. The old chart (A cream, B salt and pepper
 * 1/16 in, C medium 1/8 in, D large 1/4 in) was revised in November 2017 by the polishing council
 * of the concrete contractors' society into three classes; both are in use, so both are given.
 *
 * @param before2017 class and depth
 * @param since2017 class and share of the surface
 */
public record ExposureChart(String before2017, String since2017) {
  public static ExposureChart of(Exposure exposure) {
    return switch (exposure) {
      case CREAM ->
          new ExposureChart("A, cream", "A, cement fines: 85–95 % fines, 5–15 % fine aggregate");
      case FINE ->
          new ExposureChart(
              "B, salt and pepper, 1/16 in", "B, fine aggregate: 85–95 %, 5–15 % fines and coarse");
      case MEDIUM ->
          new ExposureChart(
              "C, medium, 1/8 in", "between B and C: the 2017 chart has no medium class");
      case COARSE ->
          new ExposureChart(
              "D, large, 1/4 in", "C, coarse aggregate: 80–90 %, 10–20 % fines and fine aggregate");
    };
  }
}
