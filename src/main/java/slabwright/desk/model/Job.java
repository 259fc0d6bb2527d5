package slabwright.desk.model;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import slabwright.sheets.AreaResult;
import slabwright.sheets.SiteResult;
import slabwright.site.Site;
import slabwright.units.Parsed;
import slabwright.work.WorkPlan;
import slabwright.work.book.ShopBook;
import slabwright.work.book.ShopBookFile;

/**
 * All of the site worked out: every floor area, and the work by the shop book. Asked for when the
 * plan has rested for a moment.
 */
public final class Job implements AutoCloseable {
  /** A plan rests when nothing changed for this long, ms. */
  private static final long REST = 400;

  /**
   * What came of it.
   *
   * @param folder of the plan
   */
  public record Done(
      Site site, Path folder, List<AreaResult> areas, WorkPlan work, String bookFrom) {}

  private record Question(Site site, Path folder) {}

  private final Desk desk;
  private final Supplier<Optional<Path>> plan;
  private final Signal changed = new Signal();
  private final Latest<Question, Done> worker;
  private Optional<Done> done = Optional.empty();

  /**
   * Listens to the desk.
   *
   * @param plan the file that graphics are relative to
   * @param home the asking thread, as an executor
   */
  public Job(Desk desk, Supplier<Optional<Path>> plan, Executor home) {
    this.desk = desk;
    this.plan = plan;
    worker =
        new Latest<>(
            "job",
            false,
            home,
            Job::work,
            this::take,
            e -> desk.refuse(Faults.unexpected("work out the job", e)));
    desk.walked().hear(this::look);
  }

  public Signal changed() {
    return changed;
  }

  /** The last answer; it may be of a plan a moment ago. */
  public Optional<Done> done() {
    return done;
  }

  public boolean isWorking() {
    return worker.isBusy();
  }

  public void cancel() {
    worker.cancel();
    changed.give();
  }

  private void look() {
    Optional<Path> folder = plan.get().map(p -> p.toAbsolutePath().getParent());
    if (!desk.isOpen() || desk.site().areas().isEmpty() || folder.isEmpty()) {
      worker.cancel();
      done = Optional.empty();
    } else {
      worker.ask(new Question(desk.site(), folder.get()));
    }
    changed.give();
  }

  private void take(Done d) {
    done = Optional.of(d);
    changed.give();
  }

  private static Done work(Question q) {
    try {
      Thread.sleep(REST);
      Parsed<ShopBookFile> book =
          ShopBookFile.find(q.folder(), Path.of(System.getProperty("user.home", ".")));
      if (book instanceof Parsed.Bad<ShopBookFile> bad) {
        throw new IllegalStateException(bad.why());
      }
      ShopBook shop = ShopBook.of(book.orThrow().text());
      SiteResult all =
          SiteResult.of(q.site(), q.folder(), shop, Thread.currentThread()::isInterrupted);
      return new Done(q.site(), q.folder(), all.areas(), all.work(), shop.origin());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("given up", e);
    }
  }

  @Override
  public void close() {
    worker.close();
  }
}
