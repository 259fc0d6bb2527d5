/**
 * Whether rings are fit to be computed with: crossing themselves, too small, too many crossings.
 * Lengths in mm.
 *
 * <p>{@link RingValidator} (entry) tells each {@link RingFault}, with {@link RingSelfCrossing};
 * {@link CrossingCount} counts crossings before anything is noded, so that a bomb is refused.
 */
package slabwright.shape.check;
