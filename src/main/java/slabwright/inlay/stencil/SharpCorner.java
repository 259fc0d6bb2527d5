package slabwright.inlay.stencil;

import slabwright.shape.Vec;

/**
 * A sharp corner.
 *
 * @param at its tip
 * @param degrees between its sides
 * @param side length of its shorter side, mm
 */
record SharpCorner(Vec at, double degrees, double side) {
  /** How far from its tip it stays narrower than {@code width}, mm; no longer than its side. */
  double narrowFor(double width) {
    double half = Math.toRadians(degrees) / 2;
    return half > 0 ? Math.min(side, width / (2 * Math.tan(half))) : side;
  }
}
