/**
 * Drawings as display lists of inks in millimetres, and their painters.
 *
 * <p>Make a {@link slabwright.inlay.proof.ShopDrawing} of inks in a site's or graphic's own frame,
 * set it on paper with a {@link slabwright.drawing.View}, and paint the result: as SVG, as PDF, as
 * a picture, or on a screen from {@link slabwright.inlay.proof.ShopDrawing#plain}, which reduces
 * every ink to strokes, fills and words.
 */
package slabwright.drawing;
