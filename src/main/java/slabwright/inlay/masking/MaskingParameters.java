package slabwright.inlay.masking;

import java.util.List;
import slabwright.site.Overspray;

/**
 * How an inlay is masked. Lengths in mm.
 *
 * @param pressBand width of the band pressed down
 * @param overspray how far mist lands beyond the openings
 * @param paperWidths widths of masking paper at hand
 * @param paperLap how far one run of paper lies over the next
 */
public record MaskingParameters(
    double pressBand, Overspray overspray, List<Double> paperWidths, double paperLap) {
  public MaskingParameters {
    paperWidths = List.copyOf(paperWidths);
  }

  /** With paper of 12, 18, 24 and 36 in and laps of 1 in (common practice, no source). */
  public static MaskingParameters of(double pressBand, Overspray overspray) {
    return new MaskingParameters(pressBand, overspray, List.of(304.8, 457.2, 609.6, 914.4), 25.4);
  }
}
