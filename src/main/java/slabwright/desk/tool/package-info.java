/**
 * What pointer and entry line do: one class a tool, all under one contract.
 *
 * <p>{@link Tool} (entry: the contract, and what it holds; {@link LineTaker} is its part that takes
 * lines) with {@link Touch}, {@link OverlayScale}, {@link PlanLookup} (what lies where), {@link
 * OverlayInks}; {@link ActiveTool} holds the one in hand, {@link ToolName} and {@link ToolGroup}
 * are the palette. Rooms: {@link DrawTool} with {@link PolylineDraft} and {@link NewFloorArea},
 * {@link TapeTool} with {@link TapeDimensions} and {@link TypedWall}, {@link CornerTool}, {@link
 * DoorwayTool}. Underlay: {@link ScaleTool}, {@link RectifyTool}. Inlays: {@link PlaceTool}. {@link
 * MeasureTool} changes nothing.
 */
package slabwright.desk.tool;
