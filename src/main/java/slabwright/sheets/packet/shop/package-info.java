/**
 * What the sign shop gets as pages: who orders what, and every panel with its dimensions.
 *
 * <p>{@link SignShopPacket} (entry): an {@link OrderPage} for each inlay and a {@link PanelPage}
 * for each of its stencils.
 */
package slabwright.sheets.packet.shop;
