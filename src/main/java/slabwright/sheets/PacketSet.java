package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.PrintedPacket;
import slabwright.sheets.packet.client.ClientPacket;
import slabwright.sheets.packet.crew.CrewPacket;
import slabwright.sheets.packet.fire.FireSafetyPacket;
import slabwright.sheets.packet.office.OfficePacket;
import slabwright.sheets.packet.shop.SignShopPacket;
import slabwright.sheets.page.FramedDraft;
import slabwright.sheets.page.Paginator;

/** The packets of a job, each for one reader and numbered within itself. */
public final class PacketSet {
  private PacketSet() {}

  /** Every packet that has a page, in the order of {@link Packet}. */
  public static List<PrintedPacket> of(PacketContents job) {
    List<PrintedPacket> all = new ArrayList<>();
    for (Packet packet : Packet.values()) {
      PrintedPacket printed = of(packet, job);
      if (!printed.pages().isEmpty()) {
        all.add(printed);
      }
    }
    return all;
  }

  /** One packet; without pages where the job has nothing for its reader. */
  public static PrintedPacket of(Packet packet, PacketContents job) {
    String called = job.words().say(packet.word());
    return new PrintedPacket(packet, Paginator.paginate(drafts(packet, job), job.issue(), called));
  }

  private static List<FramedDraft> drafts(Packet packet, PacketContents job) {
    return switch (packet) {
      case CLIENT -> ClientPacket.drafts(job);
      case CREW -> CrewPacket.drafts(job);
      case SIGN_SHOP -> SignShopPacket.drafts(job);
      case FIRE_AND_SAFETY -> FireSafetyPacket.drafts(job);
      case OFFICE -> OfficePacket.drafts(job);
    };
  }
}
