/**
 * Whether rings are fit to be computed with. Lengths in mm.
 *
 * <p>{@link RingSelfCrossing} finds where a ring crosses itself; {@link CrossingCount} counts
 * crossings before anything is noded, so that a bomb is refused.
 */
package slabwright.shape.check;
