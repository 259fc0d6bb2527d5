package slabwright.desk.model.compute;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import slabwright.desk.model.Desk;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.Latest;
import slabwright.desk.model.Selection;
import slabwright.desk.model.Signal;
import slabwright.desk.model.Stage;
import slabwright.desk.model.UnexpectedFault;
import slabwright.project.SiteResult;
import slabwright.project.export.SheetRequest;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.units.Message;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** The printed pages of the site on the paper chosen; made when the Sheets stage is looked at. */
public final class SheetPages implements AutoCloseable {
  private static final Clock CLOCK = Clock.systemDefaultZone();

  private record Question(SiteResult job, PaperSize paper) {}

  private final Desk desk;
  private final Selection focus;
  private final Words words;
  private final SiteComputation job;
  private final Supplier<Optional<Path>> plan;
  private final Signal changed = new Signal();
  private final Latest<Question, List<PrintedPage>> worker;
  private Optional<PaperSize> chosen = Optional.empty();
  private Optional<Question> asked = Optional.empty();
  private List<PrintedPage> pages = List.of();
  private int shown;

  /**
   * Listens to the job and the focus.
   *
   * @param plan the plan's file
   * @param home the asking thread, as an executor
   */
  public SheetPages(
      DeskContext bench, SiteComputation job, Supplier<Optional<Path>> plan, Executor home) {
    this.desk = bench.desk();
    this.focus = bench.focus();
    this.words = bench.words();
    this.job = job;
    this.plan = plan;
    worker =
        new Latest<>(
            "sheets",
            false,
            home,
            this::make,
            this::take,
            e -> desk.refuse(Message.of("desk.model.fault.sheets", UnexpectedFault.text(e))));
    job.changed().subscribe(this::look);
    focus.changed().subscribe(this::look);
  }

  private List<PrintedPage> make(Question q) {
    return SheetRequest.pages(q.job(), q.paper(), words, LocalDate.now(CLOCK));
  }

  public Signal changed() {
    return changed;
  }

  public List<PrintedPage> pages() {
    return pages;
  }

  public boolean isWorking() {
    return worker.isBusy();
  }

  public void cancel() {
    worker.cancel();
    asked = Optional.empty();
    changed.fire();
  }

  /** The sheets of the site as it is now, to be made off the asking thread. */
  public Optional<SheetRequest> order() {
    Optional<SiteResult> known = job.current();
    boolean made =
        known.isPresent()
            && !worker.isBusy()
            && asked.equals(Optional.of(new Question(known.get(), paper())));
    return plan.get()
        .map(
            p ->
                new SheetRequest(
                    desk.site(), p, paper(), known, made ? pages : List.of(), words, CLOCK));
  }

  /** The paper chosen; else the usual one for the units. */
  public PaperSize paper() {
    return chosen.orElse(
        desk.site().units() == UnitSystem.METRIC ? PaperSize.A3 : PaperSize.TABLOID);
  }

  public void setPaper(PaperSize paper) {
    chosen = Optional.of(paper);
    look();
    changed.fire();
  }

  /** The page looked at. */
  public Optional<PrintedPage> page() {
    return pages.isEmpty() ? Optional.empty() : Optional.of(pages.get(number()));
  }

  /** Its number, from 0. */
  public int number() {
    return Math.max(0, Math.min(pages.size() - 1, shown));
  }

  public void show(int page) {
    shown = page;
    changed.fire();
  }

  private void look() {
    if (job.done().isEmpty()) {
      pages = List.of();
      asked = Optional.empty();
      worker.cancel();
    }
    if (focus.stage() != Stage.SHEETS || job.done().isEmpty()) {
      return;
    }
    Optional<Question> now = Optional.of(new Question(job.done().get(), paper()));
    if (!now.equals(asked)) {
      asked = now;
      worker.ask(now.get());
      changed.fire();
    }
  }

  private void take(List<PrintedPage> made) {
    pages = made;
    changed.fire();
  }

  @Override
  public void close() {
    worker.close();
  }
}
