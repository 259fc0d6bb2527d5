package slabwright.sheets.packet.office;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.FramedDraft;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.quantities.QuantitiesSheet;
import slabwright.sheets.scope.HandoverSheet;
import slabwright.sheets.scope.ScopeSheet;
import slabwright.work.AreaResult;
import slabwright.work.handover.Handovers;
import slabwright.work.handover.Scope;

/** The office's pages. */
public final class OfficePacket {
  private OfficePacket() {}

  public static List<FramedDraft> drafts(PacketContents job) {
    SheetContext context = job.portrait();
    Handovers papers = Handovers.of(job.work());
    HandoverSheet handover = new HandoverSheet(context);
    List<PageDraft> drafts = new ArrayList<>(handover.paper(papers.walkthrough()));
    for (AreaResult area : job.areas()) {
      drafts.addAll(
          new QuantitiesSheet(
                  area,
                  job.work().area(area.takeoff().area().id()),
                  Optional.of(context.say(job.work().book().origin())),
                  context)
              .drafts());
    }
    drafts.addAll(new ScopeSheet(job.work(), Scope.of(job.work()), context).drafts());
    drafts.addAll(handover.paper(papers.loadList()));
    return FramedDraft.all(context, drafts);
  }
}
