/**
 * What the fire authority, the building's manager and a safety officer get.
 *
 * <p>{@link FireSafetyPacket} (entry and all of it).
 */
package slabwright.sheets.packet.fire;
