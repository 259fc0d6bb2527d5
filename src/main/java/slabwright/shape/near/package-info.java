/**
 * What lies near a place, asked again and again without looking at everything.
 *
 * <p>{@link BoxIndex} (entry): things by their boxes; those that may come near are given, and the
 * caller looks closely.
 */
package slabwright.shape.near;
