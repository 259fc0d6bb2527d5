package slabwright.desk;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Map;
import javafx.print.PageOrientation;
import javafx.print.PrinterJob;
import javafx.scene.canvas.Canvas;
import javafx.stage.Window;
import slabwright.desk.canvas.FxPainter;
import slabwright.desk.canvas.Tone;
import slabwright.desk.cards.PaperCard;
import slabwright.desk.model.Desk;
import slabwright.desk.model.Job;
import slabwright.desk.model.SheetPages;
import slabwright.sheets.Page;
import slabwright.sheets.SheetFiles;
import slabwright.sheets.csv.Quantities;
import slabwright.site.Refusal;
import slabwright.store.AtomicFile;

/** Writes the pages into a folder the person chooses, or sends them to a printer. */
final class SheetExports implements PaperCard.Exports {
  private final Desk desk;
  private final Job job;
  private final SheetPages pages;
  private final Chooser chooser;
  private final Window window;

  SheetExports(Desk desk, Job job, SheetPages pages, Chooser chooser, Window window) {
    this.desk = desk;
    this.job = job;
    this.pages = pages;
    this.chooser = chooser;
    this.window = window;
  }

  /** Writes into a folder; whatever fails is said and nothing half-written stays. */
  private interface Writing {
    void into(Path folder) throws IOException;
  }

  private void write(String what, Writing w) {
    if (pages.pages().isEmpty()) {
      desk.refuse(Refusal.of("There are no pages yet; wait until they are made."));
      return;
    }
    chooser
        .folder(what)
        .ifPresent(
            folder -> {
              try {
                Files.createDirectories(folder);
                w.into(folder);
              } catch (IOException e) {
                desk.refuse(
                    Refusal.of(
                        "Could not write into "
                            + folder
                            + ": "
                            + e.getMessage()
                            + "; choose another folder."));
              }
            });
  }

  private String stem() {
    return desk.site().name().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
  }

  @Override
  public void pdf() {
    write(
        "Folder for the PDF",
        folder -> {
          ByteArrayOutputStream bytes = new ByteArrayOutputStream();
          LocalDate today = LocalDate.now(ZoneId.systemDefault());
          SheetFiles.pdf(pages.pages(), desk.site().name(), today, bytes);
          AtomicFile.write(folder.resolve(stem() + "-sheets.pdf"), bytes.toByteArray());
        });
  }

  @Override
  public void svg() {
    write(
        "Folder for the SVG pages",
        folder -> {
          for (Map.Entry<String, String> e : SheetFiles.svgs(pages.pages()).entrySet()) {
            AtomicFile.write(
                folder.resolve(e.getKey()), e.getValue().getBytes(StandardCharsets.UTF_8));
          }
        });
  }

  @Override
  public void csv() {
    write(
        "Folder for the quantities",
        folder ->
            AtomicFile.write(
                folder.resolve(stem() + "-quantities.csv"),
                Quantities.write(job.done().orElseThrow().areas())
                    .getBytes(StandardCharsets.UTF_8)));
  }

  @Override
  public void print() {
    PrinterJob print = PrinterJob.createPrinterJob();
    if (print == null) {
      desk.refuse(Refusal.of("No printer is set up on this computer; save a PDF instead."));
      return;
    }
    if (print.showPrintDialog(window)) {
      for (Page page : pages.pages()) {
        var layout =
            print
                .getPrinter()
                .createPageLayout(
                    print.getJobSettings().getPageLayout().getPaper(),
                    PageOrientation.LANDSCAPE,
                    0,
                    0,
                    0,
                    0);
        print.printPage(layout, canvas(page));
      }
      print.endJob();
    }
  }

  /** The page in true size: 72 units to the inch. */
  private static Canvas canvas(Page page) {
    double k = 72 / 25.4;
    var b = page.drawing().bounds();
    Canvas canvas = new Canvas(b.width() * k, b.height() * k);
    page.drawing().paintOn(new FxPainter(canvas.getGraphicsContext2D(), k, Tone.LIGHT), b);
    return canvas;
  }
}
