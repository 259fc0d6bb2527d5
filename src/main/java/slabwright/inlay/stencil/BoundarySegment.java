package slabwright.inlay.stencil;

import slabwright.shape.Vec;

/**
 * One straight side of a region's boundary, with what is asked of it again and again.
 *
 * @param along unit vector from {@code a} to {@code b}
 * @param length in mm
 */
record BoundarySegment(Vec a, Vec b, Vec along, double length) {
  static BoundarySegment of(Vec a, Vec b) {
    return new BoundarySegment(a, b, b.minus(a).unit(), a.distanceTo(b));
  }
}
