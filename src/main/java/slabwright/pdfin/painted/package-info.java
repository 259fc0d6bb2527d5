/**
 * All that a page of a PDF paints, as outlines with colours: a client's graphic.
 *
 * <p>{@link PdfPainting} (entry: reads a page) holds {@link PdfPaintedShape}, {@link PdfSoftMask}
 * and {@link PdfNote}. {@link PdfPaintCollector} follows the page's operators (the path of them in
 * {@link PdfPathEngine}) in its {@link PdfPageFrame} into a {@link PdfGroup}, with {@link
 * PdfPaints}, {@link PdfPens}, {@link PdfGlyphs}, {@link PdfPictures} ({@link PdfPaintedPicture}),
 * {@link PdfNotes} and a {@link PdfLayerStack} over the file's {@link OptionalContent}. What a page
 * may ask for is bounded where it is opened.
 */
package slabwright.pdfin.painted;
