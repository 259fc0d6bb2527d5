/**
 * Cards of the Sheets stage: on which paper the pages are set, and under which release.
 *
 * <p>{@link PaperCard} (entry: paper, printing and saving), {@link ReleaseCard} (issue, and what
 * changed since).
 */
package slabwright.desk.cards.sheets;
