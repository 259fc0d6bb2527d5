/**
 * What the office gets: the walkthrough's form first, a summary, take-off, cost and orders.
 *
 * <p>{@link OfficePacket} (entry and all of it).
 */
package slabwright.sheets.packet.office;
