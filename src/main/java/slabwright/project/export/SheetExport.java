package slabwright.project.export;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import slabwright.desk.model.BackgroundTasks;
import slabwright.desk.model.compute.SiteComputation;
import slabwright.drawing.paint.SvgPainter;
import slabwright.inlay.PlacedInlay;
import slabwright.sheets.csv.QuantitiesCsv;
import slabwright.sheets.json.InlayJson;
import slabwright.sheets.json.TallyJson;
import slabwright.sheets.json.WorkJson;
import slabwright.sheets.page.PrintedPage;
import slabwright.sheets.page.SheetFiles;
import slabwright.units.Parsed;
import slabwright.words.Words;
import slabwright.work.AreaResult;

/** The sheets and their numbers as files. */
public final class SheetExport {
  /** Share of the work done when files are about to be written. */
  public static final double MADE = 0.9;

  private SheetExport() {}

  /** Makes the files of one form. */
  public static Parsed<StagedFiles> of(
      ExportFormat form, SheetRequest order, BackgroundTasks.TaskProgress steps)
      throws IOException {
    Parsed<SiteComputation.ComputedSite> work = order.compute(steps);
    if (work instanceof Parsed.Bad<SiteComputation.ComputedSite> bad) {
      return Parsed.bad(bad.why());
    }
    steps.report(0.3);
    SiteComputation.ComputedSite done = work.orThrow();
    StagedFiles files = new StagedFiles();
    switch (form) {
      case PDF -> pdf(files, order, done, steps);
      case SVG -> svg(files, order, done, steps);
      case CSV ->
          files.add(
              SheetRequest.fileNameStem(done) + "-quantities.csv",
              QuantitiesCsv.write(done.areas(), Words.english()));
      case JSON -> json(files, done);
    }
    steps.report(MADE);
    return Parsed.ok(files);
  }

  private static void pdf(
      StagedFiles files,
      SheetRequest order,
      SiteComputation.ComputedSite done,
      BackgroundTasks.TaskProgress steps)
      throws IOException {
    List<PrintedPage> pages = order.pages(done);
    steps.report(0.5);
    LocalDate today = LocalDate.now(ZoneId.systemDefault());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SheetFiles.pdf(
        pages,
        done.site().name(),
        today,
        out,
        n -> steps.report(0.5 + (MADE - 0.5) * n / pages.size()));
    files.add(SheetRequest.fileNameStem(done) + "-sheets.pdf", out.toByteArray());
  }

  private static void svg(
      StagedFiles files,
      SheetRequest order,
      SiteComputation.ComputedSite done,
      BackgroundTasks.TaskProgress steps) {
    List<PrintedPage> pages = order.pages(done);
    for (int i = 0; i < pages.size(); i++) {
      steps.report(0.5 + (MADE - 0.5) * i / pages.size());
      PrintedPage page = pages.get(i);
      files.add(
          SheetRequest.fileNameStem(done) + "-" + page.name() + ".svg",
          SvgPainter.write(page.drawing(), page.title()));
    }
  }

  private static void json(StagedFiles files, SiteComputation.ComputedSite done) {
    String stem = SheetRequest.fileNameStem(done);
    files.add(
        stem + "-tally.json",
        TallyJson.write(
            done.site(), done.areas().stream().map(AreaResult::ways).toList(), Words.english()));
    files.add(stem + "-work.json", WorkJson.write(done.work()));
    for (AreaResult a : done.areas()) {
      for (PlacedInlay i : a.inlays()) {
        files.add(
            stem + "-inlay-" + a.takeoff().area().id() + "-" + i.inlay().id() + ".json",
            InlayJson.pretty(i.inlay().graphic(), i.artwork(), i.plan(), i.inlay().spec()));
      }
    }
  }
}
