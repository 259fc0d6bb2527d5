package slabwright.desk;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import slabwright.sheets.Page;
import slabwright.sheets.Paper;

/** A printer that keeps what it was sent. */
final class TestPrinter implements Printing, Printing.Job {
  private final List<Page> pages = new CopyOnWriteArrayList<>();
  private volatile Paper paper = Paper.A1;
  private volatile boolean ended;
  private volatile boolean cancelled;

  List<Page> pages() {
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
  public Optional<Job> ask() {
    return Optional.of(this);
  }

  /** Puts other paper in. */
  void paper(Paper other) {
    paper = other;
  }

  @Override
  public boolean fits(Page page) {
    return page.paper().width() <= paper.width() && page.paper().height() <= paper.height();
  }

  @Override
  public boolean page(Page page) {
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
