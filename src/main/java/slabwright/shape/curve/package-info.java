/**
 * Rings as few cubic curves instead of many short lines, within a stated distance. Lengths in mm.
 *
 * <p>{@link CurvedRing} (entry) is a ring of {@link Bezier} pieces, fitted by {@link CurveFitOp}
 * with {@link CubicFit}.
 */
package slabwright.shape.curve;
