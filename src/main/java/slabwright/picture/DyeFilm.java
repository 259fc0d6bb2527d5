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
   * What dye must let through to look so in the book's coats, in the coats planned. It never
   * lightens: a channel brighter than the ground stays the ground's.
   *
   * @param wanted colour over the ground in {@code bookCoats}
   */
  static LinearColour transmission(
      LinearColour wanted, LinearColour ground, double coats, double bookCoats) {
    LinearColour once =
        new LinearColour(
            share(wanted.r(), ground.r()),
            share(wanted.g(), ground.g()),
            share(wanted.b(), ground.b()));
    return once.power(coats / bookCoats);
  }

  private static double share(double wanted, double ground) {
    return Math.max(LEAST, Math.min(1, wanted / ground));
  }
}
