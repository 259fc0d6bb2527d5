/**
 * From the colours of a graphic to cut stencils: one blank for the inlay, openings in laying order,
 * the mask that stays, and what in it will give trouble.
 *
 * <p>Frame: millimetres from the blank's top-left corner as read, x right, y down.
 */
package slabwright.inlay.stencil;
