/**
 * Selecting, holding and moving what lies on the slab.
 *
 * <p>{@link SelectTool} (entry). {@link Handles} gives each {@link Grip} of what is selected:
 * {@link MarkGrips}, {@link SizeGrips}, {@link WallGrips}, {@link InlayGrips}, {@link TurnHandle}.
 * What a grip does while held: {@link WallDrag}, {@link DoorwayDrag}, {@link SeamDrag}; {@link
 * SeamNudge} by keys; {@link Bulge} bends a side. {@link FloorHand} holds a floor area beside the
 * one looked at.
 */
package slabwright.desk.tool.select;
