package slabwright.desk;

import java.util.Optional;
import javafx.print.PageLayout;
import javafx.print.PageOrientation;
import javafx.print.Paper;
import javafx.print.Printer;
import javafx.print.PrinterJob;
import javafx.scene.canvas.Canvas;
import javafx.stage.Window;
import slabwright.desk.canvas.FxPainter;
import slabwright.desk.canvas.Tone;
import slabwright.sheets.page.PrintedPage;

/** Prints through the system's own dialog. */
final class FxPrinting implements Printing {
  private static final double POINTS_PER_MM = 72 / 25.4;

  private final Window window;

  FxPrinting(Window window) {
    this.window = window;
  }

  @Override
  public boolean isReady() {
    return Printer.getDefaultPrinter() != null;
  }

  @Override
  public Optional<PrintRun> ask() {
    PrinterJob job = PrinterJob.createPrinterJob();
    return job != null && job.showPrintDialog(window)
        ? Optional.of(new FxPrintRun(job))
        : Optional.empty();
  }

  private record FxPrintRun(PrinterJob job) implements PrintRun {
    /** Papers of one name differ by a hair, points. */
    private static final double SLACK = 3;

    @Override
    public boolean fits(PrintedPage page) {
      Paper paper = job.getJobSettings().getPageLayout().getPaper();
      var b = page.drawing().bounds();
      double wide = Math.max(b.width(), b.height()) * POINTS_PER_MM;
      double high = Math.min(b.width(), b.height()) * POINTS_PER_MM;
      return wide <= Math.max(paper.getWidth(), paper.getHeight()) + SLACK
          && high <= Math.min(paper.getWidth(), paper.getHeight()) + SLACK;
    }

    @Override
    public boolean page(PrintedPage page) {
      var b = page.drawing().bounds();
      PageOrientation lies =
          b.width() > b.height() ? PageOrientation.LANDSCAPE : PageOrientation.PORTRAIT;
      PageLayout layout =
          job.getPrinter()
              .createPageLayout(job.getJobSettings().getPageLayout().getPaper(), lies, 0, 0, 0, 0);
      return job.printPage(layout, canvas(page));
    }

    /** The page in true size: 72 units to the inch. */
    private static Canvas canvas(PrintedPage page) {
      var b = page.drawing().bounds();
      Canvas canvas = new Canvas(b.width() * POINTS_PER_MM, b.height() * POINTS_PER_MM);
      page.drawing()
          .paintOn(new FxPainter(canvas.getGraphicsContext2D(), POINTS_PER_MM, Tone.LIGHT), b);
      return canvas;
    }

    @Override
    public void end() {
      job.endJob();
    }

    @Override
    public void cancel() {
      job.cancelJob();
    }
  }
}
