/**
 * Sheet 3, where an inlay lies on the floor and how it is set out by tape.
 *
 * <p>{@link PlacementSheet} (entry), {@link PlacementColumn} (the words beside it), {@link
 * BlankOffsets} (distances to walls), {@link SwingTieTable} (two lengths for each corner).
 */
package slabwright.sheets.placement;
