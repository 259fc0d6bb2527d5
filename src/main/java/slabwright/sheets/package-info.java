/**
 * Which printed sheets a site gets, and in which order. This package knows every folder below; no
 * folder knows it.
 *
 * <p>{@link SheetSet} (entry: the numbered single sheets), {@link PacketSet} (entry: pages by
 * reader). Read slabwright.sheets.page first, then slabwright.sheets.plan, then any one sheet: each
 * turns results into drafts of pages.
 */
package slabwright.sheets;
