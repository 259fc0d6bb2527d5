/**
 * Drawing marks: one tool, and a shaper for each way to give a form.
 *
 * <p>{@link MarkTool} (entry) asks a {@link Shaper} for a {@link MarkShape}: {@link BoxShaper},
 * {@link PolylineShaper}, {@link FreehandShaper}, {@link PointShaper}, {@link RowShaper}, {@link
 * WholeFloorShaper}. {@link TypedRow}, {@link SizePair} and {@link RecentSizes} are typed sizes;
 * {@link MarkDefaults} is how a new mark starts.
 */
package slabwright.desk.tool.mark;
