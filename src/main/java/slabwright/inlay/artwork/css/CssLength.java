package slabwright.inlay.artwork.css;

import java.util.Optional;

/**
 * Units of length of CSS Values 3: 96 px to the inch, 2.54 cm to the inch; a font's em is 16 px.
 */
final class CssLength {
  private CssLength() {}

  /** Px in one of this unit, written small; empty for an unknown unit. */
  static Optional<Double> pxPer(String unit) {
    return switch (unit) {
      case "px" -> Optional.of(1.0);
      case "in" -> Optional.of(96.0);
      case "cm" -> Optional.of(96 / 2.54);
      case "mm" -> Optional.of(96 / 25.4);
      case "q" -> Optional.of(96 / 101.6);
      case "pt" -> Optional.of(96 / 72.0);
      case "pc", "rem" -> Optional.of(16.0);
      default -> Optional.empty();
    };
  }
}
