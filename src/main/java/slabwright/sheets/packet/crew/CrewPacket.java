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
import slabwright.sheets.packet.BriefStop;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.fire.MeterPage;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.ColumnPages;
import slabwright.sheets.page.FramedDraft;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.MissingPages;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.plan.Poster;
import slabwright.sheets.prep.FillPoster;
import slabwright.sheets.prep.PrepSheet;
import slabwright.units.Message;
import slabwright.units.PartFaults;
import slabwright.work.AreaResult;
import slabwright.work.AreaWorkPlan;
import slabwright.work.days.ICalendarWriter;

/** The crew's pages: the days first, then posters of each floor. */
public final class CrewPacket {
  private static final double BESIDE = 5;
  private static final double UNDER_TITLE = 14;

  private CrewPacket() {}

  public static List<FramedDraft> drafts(PacketContents job, MissingPages missing) {
    SheetContext wall = job.landscape();
    SheetContext hand = job.portrait();
    Message days = Message.of("sheets.crew-packet.days");
    List<FramedDraft> pages =
        new ArrayList<>(
            FramedDraft.all(
                hand, missing.or(hand, days, "", true, () -> new CrewDayPages(job).drafts())));
    Optional<String> alert = new CrewDayTexts(job).alerts().stream().findFirst();
    List<Block> lists = new ArrayList<>();
    List<FramedDraft> posters = new ArrayList<>();
    for (AreaResult area : job.areas()) {
      for (Poster p : posters(job, area, wall, missing)) {
        posters.addAll(FramedDraft.all(wall, p.pages()));
        if (!p.listed().isEmpty()) {
          lists.add(new Heading(hand.say("sheets.crew-packet.list-of", p.title(), p.area())));
          lists.addAll(p.listed());
        }
      }
    }
    posters.addAll(FramedDraft.all(hand, MeterPage.drafts(job, missing)));
    posters.addAll(FramedDraft.all(hand, lists(lists, hand)));
    List<String> named =
        job.work().outlook().canStart()
            ? List.of()
            : new BriefStop(job.work(), job.words()).heads();
    posters.forEach(p -> pages.add(alert.map(a -> stopped(p, a, named)).orElse(p)));
    return pages;
  }

  /** What belongs to the posters and has no room on them, one after the other. */
  private static List<PageDraft> lists(List<Block> lists, SheetContext hand) {
    PageDraft draft =
        new PageDraft(
            hand.say("sheets.crew-packet.lists"),
            hand.say("sheets.crew-packet.lists-say"),
            "",
            Optional.empty(),
            List.of());
    return lists.isEmpty() ? List.of() : ColumnPages.saving(hand, draft, lists);
  }

  /** The same poster with what stands against the job in red, beside the area's name. */
  private static FramedDraft stopped(FramedDraft framed, String alert, List<String> named) {
    SheetContext context = framed.context();
    PageDraft poster = framed.draft();
    Bounds frame = context.page().frame();
    TextStyle red = context.type().strong().in(Palette.RED);
    double left = TextMeasure.width(poster.area(), context.type().body()) + BESIDE;
    double right = poster.scale().isPresent() ? context.page().field().maxX() : frame.maxX();
    double room = right - frame.minX() - left;
    String words =
        named.stream()
            .filter(n -> TextMeasure.width(n, red) <= room)
            .findFirst()
            .orElseGet(() -> TextMeasure.fitted(alert, red, room));
    List<Ink> inks = new ArrayList<>(poster.inks());
    inks.add(Text.start(new Vec(frame.minX() + left, frame.minY() + UNDER_TITLE), words, red));
    return new FramedDraft(
        context, new PageDraft(poster.title(), "", poster.area(), poster.scale(), inks));
  }

  /** The rows of the day pages for a calendar; empty where the plan has no days. */
  public static List<ICalendarWriter.Day> calendar(PacketContents job) {
    return new CrewCalendarText(job).days();
  }

  /** The day pages for a phone without a network, as one HTML file. */
  public static String html(PacketContents job) {
    return html(job, List.of());
  }

  /**
   * The same.
   *
   * @param missing pages of the packet that could not be made
   */
  public static String html(PacketContents job, List<PartFaults.PartFault> missing) {
    return new CrewDayHtml(job, missing).write();
  }

  private static List<Poster> posters(
      PacketContents job, AreaResult area, SheetContext context, MissingPages missing) {
    String name = area.takeoff().area().name();
    List<Poster> posters = new ArrayList<>();
    Message prep = Message.of("sheets.prep-sheet.poster");
    if (isGround(job, area)) {
      posters.addAll(
          Poster.or(
              missing,
              context,
              prep,
              name,
              () -> List.of(new PrepSheet(area.ways(), context).poster())));
    }
    Message fill = Message.of("sheets.fill-poster.title");
    posters.addAll(
        Poster.or(
            missing,
            context,
            fill,
            name,
            () -> new FillPoster(area.takeoff(), context).poster().stream().toList()));
    for (PlacedInlay inlay : area.inlays()) {
      Message placing = Message.of("sheets.setting-out-poster.title", inlay.inlay().name());
      posters.addAll(
          Poster.or(missing, context, placing, name, () -> laying(area, inlay, context)));
    }
    Message coats = Message.of("sheets.lanes-sheet.title");
    job.work()
        .area(area.takeoff().area().id())
        .ifPresent(
            w ->
                posters.addAll(
                    Poster.or(
                        missing, context, coats, name, () -> rolling(job, area, w, context))));
    return posters;
  }

  /** Nobody is handed a list of hand work on a floor of which nothing is ground. */
  private static boolean isGround(PacketContents job, AreaResult area) {
    return job.work()
        .area(area.takeoff().area().id())
        .map(w -> w.prep().steps().stream().anyMatch(s -> s.subject().kind().grindsConcrete()))
        .orElse(true);
  }

  private static List<Poster> laying(AreaResult area, PlacedInlay inlay, SheetContext context) {
    return inlay
        .settingOut(area.takeoff(), context.units())
        .map(
            s ->
                List.of(
                    new SettingOutPoster(area, inlay, s, context).poster(),
                    new LayingPoster(area.takeoff().area(), inlay, s, context).poster()))
        .orElse(List.of());
  }

  private static List<Poster> rolling(
      PacketContents job, AreaResult area, AreaWorkPlan work, SheetContext context) {
    return LanesSheet.posters(
        area.takeoff(),
        new RollingPosters(job).coats(work),
        context.say(job.work().book().origin()),
        context);
  }
}
