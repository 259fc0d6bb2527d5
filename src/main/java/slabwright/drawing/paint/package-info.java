/**
 * The outputs of a drawing. With slabwright.pdfin the only place of PDFBox; here stand the pictures
 * too.
 *
 * <p>{@link SvgPainter}, {@link PdfFile}, {@link PngFile} and {@link PicturePainter} (entries).
 * {@link PdfPainter} draws one page; {@link PdfImages}, {@link PdfLayers}, {@link PdfFonts} and
 * {@link SvgFonts} embed what is used of a font; {@link GlyphPaths} are letters as outlines.
 */
package slabwright.drawing.paint;
