package slabwright.desk;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;

/** A printer that keeps what it was sent. */
final class TestPrinter implements Printing, Printing.PrintRun {
  private final List<PrintedPage> pages = new CopyOnWriteArrayList<>();
  private volatile PaperSize paper = PaperSize.A1;
  private volatile boolean ended;
  private volatile boolean cancelled;

  List<PrintedPage> pages() {
    return pages;
  }

  boolean ended() {
    return ended;
  }

  boolean cancelled() {
    return cancelled;
  }

  @Override
  public boolean isReady() {
    return true;
  }

  @Override
  public Optional<PrintRun> ask() {
    return Optional.of(this);
  }

  /** Puts other paper in. */
  void paper(PaperSize other) {
    paper = other;
  }

  @Override
  public boolean fits(PrintedPage page) {
    return page.paper().width() <= paper.width() && page.paper().height() <= paper.height();
  }

  @Override
  public boolean page(PrintedPage page) {
    return pages.add(page);
  }

  @Override
  public void end() {
    ended = true;
  }

  @Override
  public void cancel() {
    cancelled = true;
  }
}
