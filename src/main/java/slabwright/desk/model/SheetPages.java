package slabwright.desk.model;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import slabwright.sheets.Page;
import slabwright.sheets.Paper;
import slabwright.units.UnitSystem;

/** The printed pages of the site on the paper chosen; made when the Sheets stage is looked at. */
public final class SheetPages implements AutoCloseable {
  private record Question(Job.Done job, Paper paper) {}

  private final Desk desk;
  private final Focus focus;
  private final Job job;
  private final Supplier<Optional<Path>> plan;
  private final Signal changed = new Signal();
  private final Latest<Question, List<Page>> worker;
  private Optional<Paper> chosen = Optional.empty();
  private Optional<Question> asked = Optional.empty();
  private List<Page> pages = List.of();
  private int shown;

  /**
   * Listens to the job and the focus.
   *
   * @param plan the plan's file
   * @param home the asking thread, as an executor
   */
  public SheetPages(Desk desk, Focus focus, Job job, Supplier<Optional<Path>> plan, Executor home) {
    this.desk = desk;
    this.focus = focus;
    this.job = job;
    this.plan = plan;
    worker =
        new Latest<>(
            "sheets",
            false,
            home,
            SheetPages::make,
            this::take,
            e -> desk.refuse(Faults.unexpected("make the sheets", e)));
    job.changed().hear(this::look);
    focus.changed().hear(this::look);
  }

  private static List<Page> make(Question q) {
    return SheetOrder.pages(q.job(), q.paper());
  }

  public Signal changed() {
    return changed;
  }

  public List<Page> pages() {
    return pages;
  }

  public boolean isWorking() {
    return worker.isBusy();
  }

  public void cancel() {
    worker.cancel();
    asked = Optional.empty();
    changed.give();
  }

  /** The sheets of the site as it is now, to be made off the asking thread. */
  public Optional<SheetOrder> order() {
    Optional<Job.Done> known = job.current();
    boolean made =
        known.isPresent()
            && !worker.isBusy()
            && asked.equals(Optional.of(new Question(known.get(), paper())));
    return plan.get()
        .map(p -> new SheetOrder(desk.site(), p, paper(), known, made ? pages : List.of()));
  }

  /** The paper chosen; else the usual one for the units. */
  public Paper paper() {
    return chosen.orElse(desk.site().units() == UnitSystem.METRIC ? Paper.A3 : Paper.TABLOID);
  }

  public void setPaper(Paper paper) {
    chosen = Optional.of(paper);
    look();
    changed.give();
  }

  /** The page looked at. */
  public Optional<Page> page() {
    return pages.isEmpty() ? Optional.empty() : Optional.of(pages.get(number()));
  }

  /** Its number, from 0. */
  public int number() {
    return Math.max(0, Math.min(pages.size() - 1, shown));
  }

  public void show(int page) {
    shown = page;
    changed.give();
  }

  private void look() {
    if (focus.stage() != Stage.SHEETS || job.done().isEmpty()) {
      return;
    }
    Optional<Question> now = Optional.of(new Question(job.done().get(), paper()));
    if (!now.equals(asked)) {
      asked = now;
      worker.ask(now.get());
      changed.give();
    }
  }

  private void take(List<Page> made) {
    pages = made;
    changed.give();
  }

  @Override
  public void close() {
    worker.close();
  }
}
