package slabwright.inlay.artwork.css;

import java.util.regex.Pattern;

/**
 * Sizes as SVG 2 (10.2 to 10.4) has them where SVG 1.1 refuses: a radius that is missing or {@code
 * auto} follows its other, a size that is missing or less than nothing is nothing.
 */
final class GeometryRewriter {
  private static final Pattern NEGATIVE = Pattern.compile("-.*[1-9].*");

  private GeometryRewriter() {}

  static void rewrite(SvgElement e) {
    switch (e.name) {
      case "rect" -> {
        drop(e, "rx");
        drop(e, "ry");
        orNothing(e, "width");
        orNothing(e, "height");
      }
      case "circle" -> orNothing(e, "r");
      case "ellipse" -> {
        drop(e, "rx");
        drop(e, "ry");
        String rx = e.get("rx");
        e.attributes.putIfAbsent("rx", e.attributes.getOrDefault("ry", "0"));
        e.attributes.putIfAbsent("ry", rx.isEmpty() ? "0" : rx);
      }
      default -> {
        // only these have sizes that may be missing
      }
    }
  }

  /** Takes out what counts as not set. */
  private static void drop(SvgElement e, String size) {
    String v = e.get(size).trim();
    if (v.isEmpty() || v.equals("auto") || NEGATIVE.matcher(v).matches()) {
      e.attributes.remove(size);
    }
  }

  private static void orNothing(SvgElement e, String size) {
    drop(e, size);
    e.attributes.putIfAbsent(size, "0");
  }
}
