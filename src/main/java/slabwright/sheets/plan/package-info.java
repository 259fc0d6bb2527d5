/**
 * A plan at a true scale on a page, or on several that join.
 *
 * <p>{@link PlanSheet} and {@link Poster} (entry: one page, or tiles), {@link PlanTiling} and
 * {@link JoinMarks}. {@link PlanComposer} lays geometry, then dimensions and labels that find room:
 * {@link PlanLabel}, {@link LabelCandidates}, {@link DimensionFit}; {@link OutlineLabels} are the
 * words round a floor area's outline, {@link SideName} names its sides. {@link OverviewBlock} and
 * {@link FloorsBlock} are a plan to look at, in a column.
 */
package slabwright.sheets.plan;
