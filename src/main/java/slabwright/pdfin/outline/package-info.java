/** The lines and areas drawn on a page of a PDF, as outlines in millimetres. */
package slabwright.pdfin.outline;
