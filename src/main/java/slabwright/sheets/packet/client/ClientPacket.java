package slabwright.sheets.packet.client;

import java.util.ArrayList;
import java.util.List;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.FramedDraft;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.scope.HandoverSheet;
import slabwright.work.handover.Handovers;

/** The client's pages. */
public final class ClientPacket {
  private ClientPacket() {}

  public static List<FramedDraft> drafts(PacketContents job) {
    SheetContext context = job.portrait();
    HandoverSheet papers = new HandoverSheet(context);
    List<FramedDraft> pages = new ArrayList<>();
    job.areas()
        .forEach(
            a ->
                a.inlays()
                    .forEach(
                        i ->
                            pages.addAll(
                                FramedDraft.all(context, papers.approval(job.site(), a, i)))));
    Handovers.of(job.work())
        .reopening()
        .forEach(p -> pages.addAll(FramedDraft.all(context, papers.paper(p))));
    return pages;
  }
}
