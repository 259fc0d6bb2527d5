package slabwright.sheets.packet.crew;

import java.util.ArrayList;
import java.util.List;
import slabwright.inlay.PlacedInlay;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.FramedDraft;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.placement.PlacementSheet;
import slabwright.sheets.prep.PrepSheet;
import slabwright.work.AreaResult;

/** The crew's pages: the days first, then posters of each floor. */
public final class CrewPacket {
  private CrewPacket() {}

  public static List<FramedDraft> drafts(PacketContents job) {
    List<FramedDraft> pages =
        new ArrayList<>(
            FramedDraft.all(job.portrait(), new CrewDayPages(job).drafts()));
    SheetContext context = job.landscape();
    List<PageDraft> posters = new ArrayList<>();
    for (AreaResult area : job.areas()) {
      posters.addAll(new PrepSheet(area.ways(), context).drafts());
      for (PlacedInlay inlay : area.inlays()) {
        posters.addAll(new PlacementSheet(area, inlay, context).drafts());
      }
    }
    pages.addAll(FramedDraft.all(context, posters));
    return pages;
  }
}
