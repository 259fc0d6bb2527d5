package slabwright.desk.model.compute;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import slabwright.desk.model.Computed;
import slabwright.desk.model.Desk;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.Selection;
import slabwright.desk.model.Signal;
import slabwright.desk.model.Stage;
import slabwright.desk.model.UnexpectedFault;
import slabwright.desk.model.Wish;
import slabwright.project.SiteResult;
import slabwright.project.export.SheetRequest;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.units.Message;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** The printed pages of the site on the paper chosen; made when the Sheets stage is looked at. */
public final class SheetPages implements AutoCloseable {
  private static final Clock CLOCK = Clock.system(ZoneId.systemDefault());

  private record Question(SiteResult job, PaperSize paper) {}

  private final Desk desk;
  private final Words words;
  private final SiteComputation job;
  private final Supplier<Optional<Path>> plan;
  private final Computed<Question, List<PrintedPage>> pages;
  private Optional<PaperSize> chosen = Optional.empty();
  private int shown;

  /**
   * Follows the job and the focus.
   *
   * @param plan the plan's file
   * @param home the asking thread, as an executor
   */
  public SheetPages(
      DeskContext bench, SiteComputation job, Supplier<Optional<Path>> plan, Executor home) {
    this.desk = bench.desk();
    this.words = bench.words();
    this.job = job;
    this.plan = plan;
    Selection focus = bench.focus();
    pages =
        new Computed<>(
                Computed.Pace.hurried("sheets"),
                home,
                this::make,
                UnexpectedFault.told(desk, why -> Message.of("desk.model.fault.sheets", why)))
            .follow(
                () ->
                    focus.stage() == Stage.SHEETS || job.done().isEmpty()
                        ? Wish.of(job.done().map(j -> new Question(j, paper())))
                        : Wish.asItIs(),
                job.changed(),
                focus.changed());
  }

  private List<PrintedPage> make(Question q) {
    return SheetRequest.pages(q.job(), q.paper(), words, LocalDate.now(CLOCK));
  }

  public Signal changed() {
    return pages.changed();
  }

  public List<PrintedPage> pages() {
    return pages.value().orElse(List.of());
  }

  public boolean isWorking() {
    return pages.isBusy();
  }

  public void cancel() {
    pages.cancel();
  }

  /** The sheets of the site as it is now, to be made off the asking thread. */
  public Optional<SheetRequest> order() {
    Optional<SiteResult> known = job.current();
    List<PrintedPage> made =
        known.flatMap(k -> pages.valueOf(new Question(k, paper()))).orElse(List.of());
    return plan.get()
        .map(p -> new SheetRequest(desk.site(), p, paper(), known, made, words, CLOCK));
  }

  /** The paper chosen; else the usual one for the units. */
  public PaperSize paper() {
    return chosen.orElse(
        desk.site().units() == UnitSystem.METRIC ? PaperSize.A3 : PaperSize.TABLOID);
  }

  public void setPaper(PaperSize paper) {
    chosen = Optional.of(paper);
    pages.look();
    changed().fire();
  }

  /** The page looked at. */
  public Optional<PrintedPage> page() {
    return pages().isEmpty() ? Optional.empty() : Optional.of(pages().get(number()));
  }

  /** Its number, from 0. */
  public int number() {
    return Math.max(0, Math.min(pages().size() - 1, shown));
  }

  public void show(int page) {
    shown = page;
    changed().fire();
  }

  @Override
  public void close() {
    pages.close();
  }
}
