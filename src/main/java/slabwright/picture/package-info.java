/**
 * The floor as it should look, as a raster: from above, from the way in, on a photo. A picture of
 * what to expect; the sample panel decides.
 *
 * <p>{@link FloorScene} (entry: what lies where, from results) and {@link FloorRendering} (entry:
 * one picture of it, in bands). {@link FloorSceneBuilder} makes the scene of {@link GroundLook},
 * {@link DyeFilm}, {@link StandingBlock}, {@link BlockColours}, {@link WallPiece} and {@link
 * WallSurroundings}.
 *
 * <p>{@link FloorPainter} paints the floor's plane through any homography, in {@link FloorStrip}s:
 * {@link PixelOutline} says how much of a pixel a thing covers, {@link GroundTexture} and {@link
 * SeededNoise} what ground looks like there, {@link DyeTable} what dye lets through, in {@link
 * LinearColour}. A {@link ViewPainter} lights it: {@link PlanPainter} from above. {@link PngWriter}
 * writes the file.
 */
package slabwright.picture;
