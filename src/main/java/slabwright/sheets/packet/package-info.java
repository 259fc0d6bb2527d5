/**
 * Who gets which pages, and what every packet is made from. Knows no single packet; the folders
 * client, crew, shop, fire and office hold one each, and slabwright.sheets puts them together.
 *
 * <p>{@link Packet} (entry: the five readers, file names and titles), {@link PacketContents} (all
 * that is known of the job, with the frames to set it on), {@link PrintedPhoto} of a place, {@link
 * PrintedPacket} (its pages, numbered), {@link AgreedBefore} (what a release said otherwise),
 * {@link StopNotice} (why nothing begins yet or what is held, first of all), {@link BriefStop} and
 * {@link HeldLines} (both in a line), {@link SealedDoorways} (what is taped shut, and by whom),
 * {@link MeterLines} (who reads the meter), {@link LeftVapour} (who reads it when the crew has gone
 * home), {@link SolventNight} (where cans stand overnight), {@link CareRules} (published rules that
 * ask for care).
 */
package slabwright.sheets.packet;
