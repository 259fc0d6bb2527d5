/**
 * What the client gets: how it will look, what is done and what it costs, when the floor is shut
 * and how to keep it. No cost line, no id, no seam.
 *
 * <p>{@link ClientPacket} (entry and all of it).
 */
package slabwright.sheets.packet.client;
