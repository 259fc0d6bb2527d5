/**
 * Sheet 4, an inlay's stencils: panels in laying order, checks, film and dye.
 *
 * <p>{@link StencilSheet} (entry), {@link StencilColumn} (the words beside the panels, and how they
 * lie on the roll).
 */
package slabwright.sheets.stencil;
