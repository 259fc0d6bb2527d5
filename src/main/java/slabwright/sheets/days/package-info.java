/**
 * Sheet 6, the days: who does what when, and a page for each rolled coat.
 *
 * <p>{@link DayPlanSheet} (entry), {@link DayChart}, {@link StepList}, {@link CrewBlocks}, {@link
 * ReadingLines}, {@link OutlookBlocks} (what stands against the job, also on sheet 7). {@link
 * LanesSheet} (entry: lanes and batches of a coat), {@link CoatWords}, {@link BatchTable}, which
 * sheet 5 shows too.
 */
package slabwright.sheets.days;
