/**
 * What the sign shop gets as pages: who orders what, and every panel with its dimensions.
 *
 * <p>{@link SignShopPacket} (entry and all of it).
 */
package slabwright.sheets.packet.shop;
