/**
 * What protects the floor while dye is misted through a stencil: the band that is pressed down, the
 * paper skirt around the blank, upright masking where the mist meets a wall, and the dye itself.
 *
 * <p>Frame: millimetres from the blank's top-left corner as read, x right, y down.
 */
package slabwright.inlay.masking;
