package slabwright.desk.cards.inlay;

import java.util.OptionalDouble;

/**
 * How light the floor under an inlay looks, in words; each stands for a CIE L* in the middle of
 * what people call so (common practice, no source).
 */
enum BaseLook {
  NOT_KNOWN(0),
  VERY_LIGHT(85),
  LIGHT(70),
  MEDIUM(55),
  DARK(40),
  VERY_DARK(25);

  private final double l;

  BaseLook(double l) {
    this.l = l;
  }

  /** The nearest word. */
  static BaseLook of(OptionalDouble lightness) {
    if (lightness.isEmpty()) {
      return NOT_KNOWN;
    }
    BaseLook best = VERY_LIGHT;
    for (BaseLook b : values()) {
      double off = Math.abs(b.l - lightness.getAsDouble());
      if (b != NOT_KNOWN && off < Math.abs(best.l - lightness.getAsDouble())) {
        best = b;
      }
    }
    return best;
  }

  OptionalDouble lightness() {
    return this == NOT_KNOWN ? OptionalDouble.empty() : OptionalDouble.of(l);
  }
}
