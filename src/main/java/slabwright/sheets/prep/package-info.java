/**
 * Sheet 2, preparation: what the machine grinds, what is left to hands, and where.
 *
 * <p>{@link PrepSheet} (entry); {@link HandWorkDrawing} and {@link HandWorkList} (rows alike by
 * {@link HandWorkGroups}) of each {@link HandWorkItem}; {@link PocketNumbers} and {@link EdgeName}
 * name the places; {@link PrepTables} and {@link ReachBlock} are the columns beside the plan.
 */
package slabwright.sheets.prep;
