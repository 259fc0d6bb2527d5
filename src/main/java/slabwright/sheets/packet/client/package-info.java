/**
 * What the client gets: how it will look, what is done and what it costs, when the floor is shut
 * and how to keep it. No cost line, no id, no seam.
 *
 * <p>{@link ClientPacket} (entry): {@link ClientPlan} (the floor to look at, a {@link
 * ExpectedFloor}), {@link GraphicBlock} (a graphic with a {@link ScaleFigure}) with its {@link
 * DoorOffset}, {@link OfferPage}, {@link DatesPage} with {@link BeforeBlocks}; {@link ChangeOrder}
 * (entry) says what a release agreed otherwise; {@link SignBlock} is what is signed with its line;
 * {@link ColourWords} names colours.
 */
package slabwright.sheets.packet.client;
