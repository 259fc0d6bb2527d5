/**
 * What the office gets: the walkthrough's form first, a summary, take-off, cost and orders.
 *
 * <p>{@link OfficePacket} (entry): {@link AskBlock}s and a {@link SketchGrid} are the walkthrough's
 * form, {@link PhotoPages} of {@link PhotoRow}s are what the site looked like, {@link SummaryPage}
 * is the job on one page, {@link OfficeSections} tell tables for two columns from those for the
 * whole width.
 */
package slabwright.sheets.packet.office;
