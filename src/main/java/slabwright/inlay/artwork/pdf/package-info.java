/**
 * A page of a PDF to painted shapes.
 *
 * <p>{@link PdfArtworkReader} (entry: colour regions). What the page paints is read in {@code
 * slabwright.pdfin.painted}.
 */
package slabwright.inlay.artwork.pdf;
