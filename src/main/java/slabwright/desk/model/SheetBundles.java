package slabwright.desk.model;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import slabwright.drawing.SvgPainter;
import slabwright.inlay.PlacedInlay;
import slabwright.sheets.AreaResult;
import slabwright.sheets.Page;
import slabwright.sheets.SheetFiles;
import slabwright.sheets.csv.Quantities;
import slabwright.sheets.json.InlayJson;
import slabwright.sheets.json.TallyJson;
import slabwright.sheets.json.WorkJson;
import slabwright.units.Parsed;

/** The sheets and their numbers as files. */
public final class SheetBundles {
  /** Share of the work done when files are about to be written. */
  public static final double MADE = 0.9;

  private SheetBundles() {}

  /** Makes the files of one form. */
  public static Parsed<FileBundle> of(SheetForm form, SheetOrder order, Errands.Steps steps)
      throws IOException {
    Parsed<Job.Done> work = order.work(steps);
    if (work instanceof Parsed.Bad<Job.Done> bad) {
      return Parsed.bad(bad.why());
    }
    steps.at(0.3);
    Job.Done done = work.orThrow();
    FileBundle files = new FileBundle();
    switch (form) {
      case PDF -> pdf(files, order, done, steps);
      case SVG -> svg(files, order, done, steps);
      case CSV ->
          files.add(SheetOrder.stem(done) + "-quantities.csv", Quantities.write(done.areas()));
      case JSON -> json(files, done);
    }
    steps.at(MADE);
    return Parsed.ok(files);
  }

  private static void pdf(FileBundle files, SheetOrder order, Job.Done done, Errands.Steps steps)
      throws IOException {
    List<Page> pages = order.pages(done);
    steps.at(0.5);
    LocalDate today = LocalDate.now(ZoneId.systemDefault());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SheetFiles.pdf(
        pages,
        done.site().name(),
        today,
        out,
        n -> steps.at(0.5 + (MADE - 0.5) * n / pages.size()));
    files.add(SheetOrder.stem(done) + "-sheets.pdf", out.toByteArray());
  }

  private static void svg(FileBundle files, SheetOrder order, Job.Done done, Errands.Steps steps) {
    List<Page> pages = order.pages(done);
    for (int i = 0; i < pages.size(); i++) {
      steps.at(0.5 + (MADE - 0.5) * i / pages.size());
      Page page = pages.get(i);
      files.add(
          SheetOrder.stem(done) + "-" + page.name() + ".svg",
          SvgPainter.write(page.drawing(), page.title()));
    }
  }

  private static void json(FileBundle files, Job.Done done) {
    String stem = SheetOrder.stem(done);
    files.add(
        stem + "-tally.json",
        TallyJson.write(done.site(), done.areas().stream().map(AreaResult::ways).toList()));
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
