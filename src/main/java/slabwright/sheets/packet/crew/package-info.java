/**
 * What the crew gets: day pages and posters, no word under 10 pt.
 *
 * <p>{@link CrewPacket} (entry and all of it).
 */
package slabwright.sheets.packet.crew;
