package slabwright.desk;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import slabwright.sheets.Page;

/** A printer that keeps what it was sent. */
final class TestPrinter implements Printing, Printing.Job {
  private final List<Page> pages = new CopyOnWriteArrayList<>();
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
