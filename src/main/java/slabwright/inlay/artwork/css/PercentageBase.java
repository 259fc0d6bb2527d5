package slabwright.inlay.artwork.css;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What percentages are of, px. Known limit: a nested viewport counts as the outermost one.
 *
 * @param width what percentages across are of
 * @param height what percentages down are of
 */
record PercentageBase(double width, double height) {
  private static final Set<String> ACROSS = Set.of("x", "cx", "rx", "width", "dx");
  private static final Set<String> DOWN = Set.of("y", "cy", "ry", "height", "dy");

  /** The size that CSS 2.2 (10.3.2) gives to what states none. */
  private static final PercentageBase UNSTATED = new PercentageBase(300, 150);

  static PercentageBase of(SvgElement root) {
    List<String> box = List.of(root.get("viewBox").trim().split("[\\s,]+", -1));
    Optional<Double> w = number(box.size() == 4 ? box.get(2) : root.get("width"));
    Optional<Double> h = number(box.size() == 4 ? box.get(3) : root.get("height"));
    return new PercentageBase(w.orElse(UNSTATED.width), h.orElse(UNSTATED.height));
  }

  private static Optional<Double> number(String text) {
    return CssCalc.plain("calc(" + text + ")", 0).map(Double::valueOf).filter(v -> v > 0);
  }

  /** What a percentage of this property is of: SVG 2, 8.9. */
  double whole(String property) {
    if (ACROSS.contains(property)) {
      return width;
    }
    return DOWN.contains(property) ? height : Math.sqrt((width * width + height * height) / 2);
  }
}
