/**
 * What hands give, as values: typed lines read or answered with why not, and pointer places
 * snapped.
 *
 * <p>{@link TypedSpot}, {@link TypedWall}, {@link TypedTurn} and {@link TypedDateTime} (entries for
 * what is typed, lengths by {@link TypedLength} for a {@link LengthUse}); {@link Snapper} (entry
 * for the pointer) giving a {@link Snap}, through a {@link Viewport} from site to screen; {@link
 * GridPitch} and {@link NudgeStep} are steps that fit the zoom.
 */
package slabwright.desk.model.input;
