/**
 * One page of a PDF, opened for whoever reads it: as outlines, as a painted graphic, as a picture.
 *
 * <p>{@link PdfPageReader} (entry) opens it. {@link PdfBudget} and {@link PdfInflation} bound what
 * a file may ask for; a {@link PdfBudgetException} ends the reading.
 */
package slabwright.pdfin.page;
