package slabwright.project.export;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import slabwright.drawing.paint.SvgPainter;
import slabwright.inlay.PlacedInlay;
import slabwright.project.InlayFileNames;
import slabwright.project.SiteResult;
import slabwright.project.TaskProgress;
import slabwright.sheets.page.PrintedPage;
import slabwright.sheets.page.SheetFiles;
import slabwright.units.Result;
import slabwright.words.Words;
import slabwright.work.AreaResult;

/** The sheets and their numbers as files. */
public final class SheetExport {
  /** Share of the work done when files are about to be written. */
  public static final double MADE = 0.9;

  private SheetExport() {}

  /** Makes the files of one form. */
  public static Result<StagedFiles> of(ExportFormat form, SheetRequest order, TaskProgress steps)
      throws IOException {
    Result<SiteResult> work = order.compute(steps);
    if (work instanceof Result.Refused<SiteResult> bad) {
      return Result.refused(bad.refusals());
    }
    steps.report(0.3);
    SiteResult done = work.orThrow();
    Result<Optional<Words>> crew =
        PacketFiles.crewWords(done.site().job().crew().language(), order.words());
    if (form == ExportFormat.PACKETS && crew instanceof Result.Refused<Optional<Words>> bad) {
      return Result.refused(bad.refusals());
    }
    StagedFiles files = new StagedFiles();
    switch (form) {
      case PACKETS -> packets(files, order, done, crew.orThrow());
      case PDF -> pdf(files, order, done, steps);
      case SVG -> svg(files, order, done, steps);
      case CSV -> csv(files, done, order.words());
      case JSON -> json(files, done, order.words());
    }
    steps.report(MADE);
    return Result.ok(files);
  }

  private static void pdf(
      StagedFiles files, SheetRequest order, SiteResult done, TaskProgress steps)
      throws IOException {
    List<PrintedPage> pages = order.pages(done);
    steps.report(0.5);
    byte[] pdf =
        pdf(done.site().name(), pages, n -> steps.report(0.5 + (MADE - 0.5) * n / pages.size()));
    files.add(SheetRequest.fileNameStem(done) + "-sheets.pdf", pdf);
  }

  /** Into a folder of their own, so that the files keep their plain names. */
  private static void packets(
      StagedFiles files, SheetRequest order, SiteResult done, Optional<Words> crew)
      throws IOException {
    String folder = SheetRequest.fileNameStem(done) + "-packets/";
    PacketFiles.today(done, order.paper(), order.words(), crew)
        .since(order.plan())
        .addTo((name, bytes) -> files.add(folder + name, bytes));
  }

  /** The pages in one PDF of today. */
  public static byte[] pdf(String siteName, List<PrintedPage> pages) throws IOException {
    return pdf(siteName, pages, n -> {});
  }

  private static byte[] pdf(String siteName, List<PrintedPage> pages, IntConsumer written)
      throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SheetFiles.pdf(pages, siteName, LocalDate.now(ZoneId.systemDefault()), out, written);
    return out.toByteArray();
  }

  private static void svg(
      StagedFiles files, SheetRequest order, SiteResult done, TaskProgress steps) {
    List<PrintedPage> pages = order.pages(done);
    for (int i = 0; i < pages.size(); i++) {
      steps.report(0.5 + (MADE - 0.5) * i / pages.size());
      PrintedPage page = pages.get(i);
      files.add(
          SheetRequest.fileNameStem(done) + "-" + page.name() + ".svg",
          SvgPainter.write(page.drawing(), page.title()));
    }
  }

  private static void csv(StagedFiles files, SiteResult done, Words words) {
    String stem = SheetRequest.fileNameStem(done);
    SiteNumbers numbers = new SiteNumbers(done, words);
    files.add(stem + "-quantities.csv", numbers.quantities());
    files.add(stem + "-takeoff.csv", numbers.takeoff());
    files.add(stem + "-buy.csv", numbers.buying());
  }

  private static void json(StagedFiles files, SiteResult done, Words words) {
    String stem = SheetRequest.fileNameStem(done);
    SiteNumbers numbers = new SiteNumbers(done, words);
    files.add(stem + "-tally.json", numbers.tally());
    files.add(stem + "-work.json", numbers.work());
    InlayFileNames names = new InlayFileNames(done.site());
    for (AreaResult a : done.areas()) {
      for (PlacedInlay i : a.inlays()) {
        files.add(
            stem + "-inlay-" + names.fullId(a.takeoff().area(), i.inlay(), "-") + ".json",
            numbers.inlay(a, i));
      }
    }
  }
}
