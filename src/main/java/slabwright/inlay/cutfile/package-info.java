/**
 * What goes to the sign shop: one cut file for each panel of each stencil, a proof page that says
 * in words and in a picture what is weeded, and the bundle of all of it.
 *
 * <p>Frame of a cut file: millimetres from the panel's own top-left corner as read, x right, y
 * down; never mirrored.
 */
package slabwright.inlay.cutfile;
