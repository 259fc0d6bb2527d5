/**
 * A taped room on a page of its own: error ellipses, residuals, every reading and what to measure
 * again.
 *
 * <p>{@link TapeSheet} (entry and all of it); its picture comes from slabwright.figures.
 */
package slabwright.sheets.tape;
