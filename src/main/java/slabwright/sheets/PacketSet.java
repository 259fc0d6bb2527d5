package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.PrintedPacket;
import slabwright.sheets.packet.StopNotice;
import slabwright.sheets.packet.client.ClientPacket;
import slabwright.sheets.packet.crew.CrewPacket;
import slabwright.sheets.packet.fire.FireSafetyPacket;
import slabwright.sheets.packet.office.OfficePacket;
import slabwright.sheets.packet.shop.SignShopPacket;
import slabwright.sheets.page.FramedDraft;
import slabwright.sheets.page.MissingPages;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.Paginator;
import slabwright.sheets.page.SheetContext;
import slabwright.units.PartFaults;

/**
 * The packets of a job, each for one reader and numbered within itself. A page that a fault ended
 * is told on the first page of its packet, and one that people's safety hangs on in every packet.
 */
public final class PacketSet {
  private PacketSet() {}

  private record Drafts(
      Packet packet, List<FramedDraft> pages, List<PartFaults.PartFault> faults) {}

  /** Every packet that has a page, in the order of {@link Packet}. */
  public static List<PrintedPacket> of(PacketContents job) {
    return of(job, List.of(Packet.values()));
  }

  /** Those of these packets that have a page. */
  public static List<PrintedPacket> of(PacketContents job, List<Packet> wanted) {
    List<Drafts> drafts = wanted.stream().map(p -> drafts(p, job)).toList();
    return drafts.stream()
        .filter(d -> !d.pages().isEmpty())
        .map(d -> printed(d, job, toBeTold(d, drafts)))
        .toList();
  }

  /** One packet; without pages where the job has nothing for its reader. */
  public static PrintedPacket of(Packet packet, PacketContents job) {
    Drafts drafts = drafts(packet, job);
    return printed(drafts, job, drafts.faults());
  }

  private static List<PartFaults.PartFault> toBeTold(Drafts of, List<Drafts> all) {
    List<PartFaults.PartFault> told = new ArrayList<>(of.faults());
    all.stream()
        .filter(d -> d.packet() != of.packet())
        .flatMap(d -> d.faults().stream())
        .filter(f -> f.safety() && !told.contains(f))
        .forEach(told::add);
    return told;
  }

  private static PrintedPacket printed(
      Drafts drafts, PacketContents job, List<PartFaults.PartFault> told) {
    SheetContext context = job.portrait();
    List<PageDraft> first = MissingPages.notice(context, told, StopNotice.blocks(job, context));
    List<FramedDraft> pages = new ArrayList<>(FramedDraft.all(context, first));
    pages.addAll(drafts.pages());
    String called = context.say(drafts.packet().word());
    return new PrintedPacket(drafts.packet(), Paginator.paginate(pages, job.issue(), called), told);
  }

  private static Drafts drafts(Packet packet, PacketContents job) {
    PartFaults faults = new PartFaults();
    List<FramedDraft> pages =
        faults.make(
            packet.word(),
            packet == Packet.CREW || packet == Packet.FIRE_AND_SAFETY,
            () -> drafts(packet, job, new MissingPages(faults)),
            () ->
                FramedDraft.all(
                    job.portrait(),
                    List.of(MissingPages.missing(job.portrait(), packet.word(), ""))));
    return new Drafts(packet, pages, faults.all());
  }

  private static List<FramedDraft> drafts(Packet packet, PacketContents job, MissingPages missing) {
    return switch (packet) {
      case CLIENT -> ClientPacket.drafts(job, missing);
      case CREW -> CrewPacket.drafts(job, missing);
      case SIGN_SHOP -> SignShopPacket.drafts(job, missing);
      case FIRE_AND_SAFETY -> FireSafetyPacket.drafts(job, missing);
      case OFFICE -> OfficePacket.drafts(job, missing);
    };
  }
}
