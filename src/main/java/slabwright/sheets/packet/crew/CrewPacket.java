package slabwright.sheets.packet.crew;

import java.util.ArrayList;
import java.util.List;
import slabwright.inlay.PlacedInlay;
import slabwright.sheets.days.LanesSheet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.FramedDraft;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.prep.PrepSheet;
import slabwright.work.AreaResult;
import slabwright.work.AreaWorkPlan;

/** The crew's pages: the days first, then posters of each floor. */
public final class CrewPacket {
  private CrewPacket() {}

  public static List<FramedDraft> drafts(PacketContents job) {
    List<FramedDraft> pages =
        new ArrayList<>(FramedDraft.all(job.portrait(), new CrewDayPages(job).drafts()));
    SheetContext context = job.landscape();
    for (AreaResult area : job.areas()) {
      pages.addAll(FramedDraft.all(context, posters(job, area, context)));
    }
    return pages;
  }

  /** The day pages for a phone without a network, as one HTML file. */
  public static String html(PacketContents job) {
    return new CrewDayHtml(job).write();
  }

  private static List<PageDraft> posters(
      PacketContents job, AreaResult area, SheetContext context) {
    List<PageDraft> posters = new ArrayList<>(new PrepSheet(area.ways(), context).poster());
    for (PlacedInlay inlay : area.inlays()) {
      inlay
          .settingOut(area.takeoff(), context.units())
          .ifPresent(
              s -> {
                posters.addAll(new SettingOutPoster(area, inlay, s, context).drafts());
                posters.addAll(new LayingPoster(area.takeoff().area(), inlay, s, context).drafts());
              });
    }
    job.work()
        .area(area.takeoff().area().id())
        .ifPresent(w -> posters.addAll(rolling(job, area, w, context)));
    return posters;
  }

  private static List<PageDraft> rolling(
      PacketContents job, AreaResult area, AreaWorkPlan work, SheetContext context) {
    return LanesSheet.all(
        area.takeoff(),
        work.coats().stream().filter(c -> !job.work().outlook().isHeld(work.id(), c)).toList(),
        context.say(job.work().book().origin()),
        context);
  }
}
