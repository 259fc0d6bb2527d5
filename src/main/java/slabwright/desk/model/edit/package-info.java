/**
 * Pure functions from a part of the plan to the changed part; what the desk then pushes.
 *
 * <p>On what is selected: {@link SelectionEdits} (entry: move, turn, remove), {@link Arranging} (in
 * line, evenly), {@link Clipboard} with {@link PasteOp}. On one thing: {@link InlayChange}, {@link
 * StencilSpecChange}, {@link FilmSpecChange}, {@link ColourUse}, {@link SlabChange}, {@link
 * FormPoints}, {@link Walls}. On several floor areas: {@link FloorsBeside} (which doorway leads
 * where, floors laid so that they meet). {@link PinnedTo} says which photos a thing has. {@link
 * NewIds} gives ids that are free, {@link PlainNames} names.
 */
package slabwright.desk.model.edit;
