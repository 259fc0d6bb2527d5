/**
 * What hands give, as values that several screens share.
 *
 * <p>{@link TypedSpot} (entry for a place typed), lengths by {@link TypedLength} for a {@link
 * LengthUse}; a {@link Snap} is what the pointer holds on to, through a {@link Viewport} from site
 * to screen.
 */
package slabwright.desk.model.input;
