package slabwright.picture;

import java.util.List;
import slabwright.shape.Ring;

/**
 * Dye over a part of the floor, all its coats together. A film filters each channel of the light
 * that the concrete throws back (Beer and Lambert): twice the dye lets the square through.
 *
 * @param rings where, site frame
 * @param transmission by channel over ground that takes as much as the old slab; 1 lets all through
 */
record DyeFilm(List<Ring> rings, LinearColour transmission) {
  /** Dye can't make anything blacker than this share of its light. */
  private static final double LEAST = 0.004;

  DyeFilm {
    rings = List.copyOf(rings);
  }

  /**
   * What dye must let through to look so in the book's coats, in the coats planned. Dye never
   * lightens: a colour with a channel brighter than the ground is shown in its hue, as light as the
   * ground allows.
   *
   * @param wanted colour over the ground in {@code bookCoats}
   */
  static LinearColour transmission(
      LinearColour wanted, LinearColour ground, double coats, double bookCoats) {
    double r = wanted.r() / ground.r();
    double g = wanted.g() / ground.g();
    double b = wanted.b() / ground.b();
    double most = Math.max(1, Math.max(r, Math.max(g, b)));
    return new LinearColour(atLeast(r / most), atLeast(g / most), atLeast(b / most))
        .power(coats / bookCoats);
  }

  private static double atLeast(double share) {
    return Math.max(LEAST, share);
  }
}
