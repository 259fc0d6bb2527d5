/**
 * From a blank to panels a roll wide: where the seams lie, what each costs, and in which order the
 * panels are cut and laid.
 *
 * <p>Strips run along the roll. Inside this package u runs across the strips and v along them; all
 * that leaves it is in the blank's frame (mm from its top-left corner as read, x right, y down).
 */
package slabwright.inlay.panel;
