package slabwright.inlay.stencil;

import slabwright.shape.Vec;

/**
 * Where a region is narrow between two opposed pieces of its boundary.
 *
 * @param at the middle of the narrowest spot
 * @param width there, mm
 */
record ThinPlace(Vec at, double width) {}
