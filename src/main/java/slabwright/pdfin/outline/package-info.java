/**
 * The lines and areas drawn on a page of a PDF, as outlines in millimetres: what a sign shop's PDF
 * says.
 *
 * <p>{@link PdfOutlines} (entry: reads a page), {@link PdfOutline} (one line or area), {@link
 * PdfPathCollector} (follows the page's operators), {@link PdfWordCollector} (joins glyphs), {@link
 * PdfWindows} (what clips let through).
 */
package slabwright.pdfin.outline;
