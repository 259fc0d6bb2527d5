package slabwright.inlay.stencil;

import slabwright.shape.Vec;

/** One straight side of a region's boundary. */
record BoundarySegment(Vec a, Vec b) {
  double length() {
    return a.distanceTo(b);
  }
}
