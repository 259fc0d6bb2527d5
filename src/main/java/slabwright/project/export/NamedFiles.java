package slabwright.project.export;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.function.IntConsumer;
import slabwright.drawing.paint.SvgFonts;
import slabwright.drawing.paint.SvgPainter;
import slabwright.inlay.PlacedInlay;
import slabwright.project.InlayFileNames;
import slabwright.project.SiteResult;
import slabwright.sheets.csv.BuyCsv;
import slabwright.sheets.csv.QuantitiesCsv;
import slabwright.sheets.csv.TakeoffCsv;
import slabwright.sheets.json.InlayJson;
import slabwright.sheets.json.TallyJson;
import slabwright.sheets.json.WorkJson;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.crew.CrewPacket;
import slabwright.sheets.page.PrintedPage;
import slabwright.sheets.page.SheetFiles;
import slabwright.units.PartFaults;
import slabwright.units.UnitSystem;
import slabwright.words.Words;
import slabwright.work.AreaResult;
import slabwright.work.days.ICalendarWriter;
import slabwright.work.handover.OwnerTimes;
import slabwright.work.handover.Reopening;

/**
 * The files of a computed site, each with the name and the bytes that it has whichever door asks.
 *
 * @param words they are written in
 * @param clock says the day and moment they are made
 * @param faults told of files that could not be made; the others are made all the same
 */
record NamedFiles(SiteResult result, Words words, Clock clock, PartFaults faults) {
  /** JSON is in English in every language, as programs read it. */
  private static final Words JSON = Words.english();

  /** The pages in one PDF; {@code before} is told before each page how many are done. */
  void pdf(FileSink into, List<PrintedPage> pages, IntConsumer before) {
    guarded(into).add("sheets.pdf", () -> pdf(pages, before));
  }

  private byte[] pdf(List<PrintedPage> pages, IntConsumer before) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SheetFiles.pdf(pages, result.site().name(), LocalDate.now(clock), out, before);
    return out.toByteArray();
  }

  private GuardedFiles guarded(FileSink into) {
    return new GuardedFiles(into, faults);
  }

  /** Each page as an SVG; {@code before} is told before each page how many are done. */
  void svgs(FileSink into, List<PrintedPage> pages, IntConsumer before) throws IOException {
    try (SvgFonts fonts = new SvgFonts()) {
      for (int i = 0; i < pages.size(); i++) {
        before.accept(i);
        PrintedPage page = pages.get(i);
        guarded(into)
            .text(
                "sheets/" + page.name() + ".svg",
                () -> SvgPainter.write(page.drawing(), page.title(), fonts));
      }
    }
  }

  /** Quantities, the take-off in the plan's units with names, and what is bought: CSV. */
  void tables(FileSink into) {
    GuardedFiles files = guarded(into);
    files.text("quantities.csv", () -> QuantitiesCsv.write(result.areas(), words));
    files.text("takeoff.csv", () -> TakeoffCsv.write(result.areas(), units(), words));
    files.text("buy.csv", () -> BuyCsv.write(result.work(), words));
  }

  /** Areas and edges, the work, and each inlay on its floor: JSON. */
  void numbers(FileSink into) {
    GuardedFiles files = guarded(into);
    files.text(
        "tally.json",
        () ->
            TallyJson.write(
                result.site(), result.areas().stream().map(AreaResult::ways).toList(), JSON));
    files.text("work.json", () -> WorkJson.write(result.work(), JSON));
    for (AreaResult a : result.areas()) {
      for (PlacedInlay i : a.inlays()) {
        files.text(
            "inlay-" + names().id(a.takeoff().area(), i.inlay()) + ".json",
            () -> InlayJson.placed(i, a.takeoff(), units(), JSON));
      }
    }
  }

  /**
   * The days for the crew's calendar, and for the client's and other trades'; none undated.
   *
   * @param job what the crew's pages are made from
   */
  void calendars(FileSink into, PacketContents job) {
    String site = result.site().name();
    Instant now = clock.instant();
    result
        .work()
        .days()
        .maybe()
        .filter(d -> result.work().dated())
        .ifPresent(
            d -> {
              GuardedFiles files = guarded(into);
              files.text(
                  "days.ics",
                  () -> ICalendarWriter.of(CrewPacket.calendar(job), site, now, words::say));
              files.text(
                  "days-client-and-trades.ics",
                  () ->
                      ICalendarWriter.forOthers(
                          d,
                          OwnerTimes.of(result.work()).duties(),
                          Reopening.closures(result.work()),
                          site,
                          now,
                          words::say));
            });
  }

  /** What cuts one inlay, and the folder it goes into. */
  InlayCutFiles cut(AreaResult area, PlacedInlay i) throws IOException {
    return new InlayCutFiles(
        names().title(area.takeoff().area(), i.inlay()),
        result.site().releaseNumber(),
        units(),
        clock.instant(),
        ShopPapers.of(result, area, i, words, LocalDate.now(clock)),
        words);
  }

  /** The folder of one inlay's cut files. */
  String cutFolder(AreaResult area, PlacedInlay i) {
    return "cut-" + names().id(area.takeoff().area(), i.inlay());
  }

  private InlayFileNames names() {
    return new InlayFileNames(result.site());
  }

  private UnitSystem units() {
    return result.site().units();
  }
}
