/**
 * What goes to the sign shop: one cut file for each panel of each stencil, a proof page that says
 * in words and in a picture what is weeded, and the bundle of all of it. Frame of a cut file:
 * millimetres from the panel's own top-left corner as read, x right, y down; never mirrored.
 *
 * <p>{@link ShopBundle} (entry) of a {@link CutFileParameters}, which names each {@link CutFile},
 * in {@link CutLayer}s; {@link CutFileBuilder} with {@link PenPlaces}, {@link PenLabel} in {@link
 * StrokeLetters} and {@link WeedCuts}; {@link SvgCutWriter}, {@link PdfCutWriter}; {@link
 * ProofPage} with {@link ProofPicture}, {@link ProofFacts} and the {@link StayingPieces} that it
 * rings; {@link FilmOrder} and {@link OrderText}. {@link CutStop} says why an inlay must not be
 * cut.
 */
package slabwright.inlay.cutfile;
