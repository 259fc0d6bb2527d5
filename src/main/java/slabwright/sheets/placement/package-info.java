/**
 * Sheet 3, where an inlay lies on the floor and how it is set out by tape.
 *
 * <p>{@link PlacementSheet} (entry), {@link PlacementColumn} (the words beside it), {@link
 * SettingOutSteps} (the setting out in sentences, for every paper).
 */
package slabwright.sheets.placement;
