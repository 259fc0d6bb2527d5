package slabwright.inlay.stencil;

/**
 * What the film and the hand can do. All common practice, no source: ask the sign shop.
 *
 * @param mask narrowest mask that holds, mm
 * @param opening narrowest opening that can be weeded and takes dye, mm
 * @param loosePiece smallest loose piece that stays put on transfer tape, mm²
 * @param scrap an opening smaller than this is hardly meant, mm²
 * @param needle a point sharper than this lifts or tears, degrees
 */
public record StencilLimits(
    double mask, double opening, double loosePiece, double scrap, double needle) {
  /** Points sharper than this are needles, degrees. */
  static final double NEEDLE = 20;

  /** Limits that follow from the narrowest mask the film holds. */
  public static StencilLimits forFilm(double holds) {
    return new StencilLimits(holds, holds, 25 * holds * holds, 2 * holds * holds, NEEDLE);
  }
}
