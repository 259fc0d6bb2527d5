package slabwright.sheets.packet.crew;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.drawing.TextStyle;
import slabwright.inlay.PlacedInlay;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
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
  private static final double BESIDE = 5;
  private static final double UNDER_TITLE = 14;

  private CrewPacket() {}

  public static List<FramedDraft> drafts(PacketContents job) {
    List<FramedDraft> pages =
        new ArrayList<>(FramedDraft.all(job.portrait(), new CrewDayPages(job).drafts()));
    SheetContext context = job.landscape();
    Optional<String> alert = new CrewDayTexts(job).alerts().stream().findFirst();
    for (AreaResult area : job.areas()) {
      for (FramedDraft poster : posters(job, area, context)) {
        pages.add(alert.map(a -> stopped(poster, a)).orElse(poster));
      }
    }
    return pages;
  }

  /** The same poster with what stands against the job in red, beside the area's name. */
  private static FramedDraft stopped(FramedDraft framed, String alert) {
    SheetContext context = framed.context();
    PageDraft poster = framed.draft();
    Bounds frame = context.page().frame();
    TextStyle red = context.type().strong().in(Palette.RED);
    double named = TextMeasure.width(poster.area(), context.type().body()) + BESIDE;
    double right = poster.scale().isPresent() ? context.page().field().maxX() : frame.maxX();
    String words = TextMeasure.fitted(alert, red, right - frame.minX() - named);
    List<Ink> inks = new ArrayList<>(poster.inks());
    inks.add(Text.start(new Vec(frame.minX() + named, frame.minY() + UNDER_TITLE), words, red));
    return new FramedDraft(
        context, new PageDraft(poster.title(), "", poster.area(), poster.scale(), inks));
  }

  /** The day pages for a phone without a network, as one HTML file. */
  public static String html(PacketContents job) {
    return new CrewDayHtml(job).write();
  }

  private static List<FramedDraft> posters(
      PacketContents job, AreaResult area, SheetContext context) {
    List<FramedDraft> posters = new ArrayList<>(new PrepSheet(area.ways(), context).poster());
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

  private static List<FramedDraft> rolling(
      PacketContents job, AreaResult area, AreaWorkPlan work, SheetContext context) {
    return LanesSheet.posters(
        area.takeoff(),
        work.coats().stream().filter(c -> !job.work().outlook().isHeld(work.id(), c)).toList(),
        context.say(job.work().book().origin()),
        context);
  }
}
