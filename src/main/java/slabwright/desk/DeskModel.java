package slabwright.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;
import slabwright.desk.model.BackgroundTasks;
import slabwright.desk.model.Desk;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.DeskSettings;
import slabwright.desk.model.ProgressMonitor;
import slabwright.desk.model.Selection;
import slabwright.desk.model.Signal;
import slabwright.desk.model.Stage;
import slabwright.desk.model.compute.Proofs;
import slabwright.desk.model.compute.SeamCosts;
import slabwright.desk.model.compute.SelectedAreaResults;
import slabwright.desk.model.compute.SelectedAreaRoutes;
import slabwright.desk.model.compute.SelectedAreaWarnings;
import slabwright.desk.model.compute.SheetPages;
import slabwright.desk.model.compute.SiteComputation;
import slabwright.desk.model.plan.PlanList;
import slabwright.desk.model.plan.PlanSketches;
import slabwright.desk.model.plan.PlanStorage;
import slabwright.desk.model.plan.Releases;
import slabwright.desk.model.plan.ShopBookEditor;
import slabwright.desk.model.plan.TapedRooms;
import slabwright.desk.model.scene.ExpectedLook;
import slabwright.desk.model.scene.Pictures;
import slabwright.project.AreaCache;
import slabwright.project.plan.BackgroundWriter;
import slabwright.units.Message;
import slabwright.words.Words;

/** The desk without its screens, put together: what is open, and all that is worked out of it. */
record DeskModel(
    DeskContext bench,
    PlanStorage keeper,
    PlanList plans,
    PlanSketches sketches,
    Pictures pictures,
    SelectedAreaResults answers,
    SelectedAreaRoutes ways,
    SelectedAreaWarnings warnings,
    SeamCosts seams,
    ExpectedLook look,
    TapedRooms rooms,
    TapeWalkJournal walks,
    SiteComputation job,
    ShopBookEditor book,
    SheetPages pages,
    Releases releases,
    BackgroundTasks errands,
    Proofs proofs,
    ProgressMonitor waiting,
    BackgroundWriter writer)
    implements AutoCloseable {
  /**
   * A desk with nothing open.
   *
   * @param words of the language the person reads
   * @param data the user's data folder
   * @param home the asking thread, as an executor
   */
  public static DeskModel of(DeskSettings settings, Words words, Path data, Executor home) {
    Desk desk = new Desk();
    Selection focus = new Selection(desk);
    DeskContext bench = new DeskContext(desk, focus, settings, words);
    Pictures pictures = new Pictures(desk, focus, home);
    BackgroundWriter writer = new BackgroundWriter("plan-files", home);
    PlanStorage keeper = new PlanStorage(desk, settings, data, writer);
    PlanList plans = new PlanList(desk, settings, keeper, home);
    AreaCache areas = new AreaCache();
    SelectedAreaResults answers = new SelectedAreaResults(desk, focus, keeper::plan, areas, home);
    SiteComputation job = new SiteComputation(desk, keeper::plan, areas, home);
    SheetPages pages = new SheetPages(bench, job, keeper::plan, home);
    BackgroundTasks errands = new BackgroundTasks(desk, home);
    ShopBookEditor book =
        new ShopBookEditor(
            desk, keeper::plan, Path.of(System.getProperty("user.home", ".")), writer);
    DeskModel parts =
        new DeskModel(
            bench,
            keeper,
            plans,
            new PlanSketches(plans, home),
            pictures,
            answers,
            new SelectedAreaRoutes(desk, focus, answers, home),
            new SelectedAreaWarnings(desk, focus, answers, home),
            new SeamCosts(desk, focus, answers, home),
            new ExpectedLook(desk, answers, book::text, home),
            new TapedRooms(desk, keeper::plan, writer),
            new TapeWalkJournal(desk, keeper::walk, writer),
            job,
            book,
            pages,
            new Releases(desk, keeper::plan, errands, home),
            errands,
            new Proofs(desk, answers, errands),
            new ProgressMonitor(home),
            writer);
    parts.watch();
    parts.releases.graphicsChanged().subscribe(answers::recompute);
    parts.releases.graphicsChanged().subscribe(job::recompute);
    return parts;
  }

  /** Work the desk does by itself, as something to wait for. */
  private record OwnWork(Optional<Message> words, BooleanSupplier busy, Runnable stop)
      implements ProgressMonitor.ProgressSource {
    @Override
    public boolean isBusy() {
      return busy.getAsBoolean();
    }

    @Override
    public double share() {
      return -1;
    }

    @Override
    public void cancel() {
      stop.run();
    }
  }

  private void watch() {
    Optional<Message> inlay = Optional.of(Message.of("desk.app.working-out-the-inlay"));
    Optional<Message> sheets = Optional.of(Message.of("desk.app.making-the-sheets"));
    book.changed().subscribe(job::recompute);
    waiting.watch(errands, errands.changed());
    Optional<Message> floor = Optional.of(Message.of("desk.app.working-out-the-floor"));
    waiting.watch(
        new OwnWork(floor, () -> !answers.isTakenOff(), answers::cancelTakeoff),
        answers.changed(),
        bench.desk().changed());
    waiting.watch(new OwnWork(inlay, answers::isWorking, answers::cancel), answers.changed());
    waiting.watch(
        new OwnWork(sheets, this::isMakingSheets, this::stopSheets),
        job.changed(),
        pages.changed(),
        bench.focus().changed());
  }

  private boolean isMakingSheets() {
    return bench.focus().stage() == Stage.SHEETS && (job.isWorking() || pages.isWorking());
  }

  private void stopSheets() {
    job.cancel();
    pages.cancel();
  }

  /** Tells of every change of anything. */
  public void subscribe(Runnable r) {
    for (Signal s :
        List.of(
            bench.desk().changed(),
            bench.focus().changed(),
            pictures.changed(),
            plans.changed(),
            sketches.changed(),
            answers.changed(),
            ways.changed(),
            warnings.changed(),
            seams.changed(),
            look.changed(),
            rooms.changed(),
            job.changed(),
            book.changed(),
            pages.changed(),
            errands.changed(),
            waiting.changed(),
            releases.changed(),
            proofs.changed())) {
      s.subscribe(r);
    }
  }

  /** Whether everything shown has been worked out. */
  public boolean isUpToDate() {
    return pictures.isUpToDate()
        && !plans.isWorking()
        && !sketches.isWorking()
        && answers.isUpToDate()
        && !releases.isWorking()
        && !warnings.isWorking()
        && seams.isUpToDate()
        && !errands.isBusy()
        && !writer.isBusy();
  }

  /** Whether the whole job and its pages have been worked out too. */
  public boolean isAllWorkedOut() {
    return isUpToDate()
        && !look.isWorking()
        && !ways.isWorking()
        && !job.isWorking()
        && !pages.isWorking();
  }

  @Override
  public void close() {
    errands.close();
    releases.close();
    keeper.close();
    writer.close();
    pictures.close();
    plans.close();
    sketches.close();
    answers.close();
    ways.close();
    warnings.close();
    seams.close();
    look.close();
    job.close();
    pages.close();
  }
}
