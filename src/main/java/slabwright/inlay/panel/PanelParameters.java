package slabwright.inlay.panel;

import io.soabase.recordbuilder.core.RecordBuilder;

/**
 * How a blank is cut into panels. Lengths in mm.
 *
 * @param roll the film
 * @param overlap how far a panel lies over its neighbour
 * @param stagger how far inner joints of neighbouring strips stay apart
 * @param pitch the step at which seam places are tried, besides the artwork's own gaps
 * @param weights what a seam costs
 * @param trafficFrom the side people come from; laps point away from it
 */
@RecordBuilder
public record PanelParameters(
    Roll roll,
    double overlap,
    double stagger,
    double pitch,
    SeamWeights weights,
    BlankSide trafficFrom)
    implements PanelParametersBuilder.With {

  /** A 48 in roll, half an inch of overlap, joints 300 mm apart, tried every 10 mm. */
  public static PanelParameters usual() {
    return new PanelParameters(
        Roll.ofWidth(1219.2), 12.7, 300, 10, SeamWeights.usual(), BlankSide.BOTTOM);
  }

  /** No strip is narrower than this: its two edges must not share slivers or laps. */
  double narrowest() {
    return Math.max(2 * weights.sliverWidth(), 2 * overlap);
  }
}
