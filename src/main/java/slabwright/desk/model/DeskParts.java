package slabwright.desk.model;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Executor;

/** The desk without its screens, put together: what is open, and all that is worked out of it. */
public record DeskParts(
    Bench bench,
    PlanKeeper keeper,
    Pictures pictures,
    Answers answers,
    WaysAnswer ways,
    SeamCosts seams,
    TapedRooms rooms,
    WalkKeeper walks,
    Job job,
    BookKeeper book,
    SheetPages pages,
    Releases releases,
    Errands errands,
    Proofs proofs,
    Waiting waiting)
    implements AutoCloseable {
  /**
   * A desk with nothing open.
   *
   * @param data the user's data folder
   * @param home the asking thread, as an executor
   */
  public static DeskParts of(Settings settings, Path data, Executor home) {
    Desk desk = new Desk();
    Focus focus = new Focus(desk);
    Bench bench = new Bench(desk, focus, settings);
    Pictures pictures = new Pictures(desk, focus, home);
    PlanKeeper keeper = new PlanKeeper(desk, settings, data, home);
    Answers answers = new Answers(desk, focus, keeper::plan, home);
    Job job = new Job(desk, keeper::plan, home);
    SheetPages pages = new SheetPages(desk, focus, job, keeper::plan, home);
    Errands errands = new Errands(desk, home);
    DeskParts parts =
        new DeskParts(
            bench,
            keeper,
            pictures,
            answers,
            new WaysAnswer(desk, focus, answers, home),
            new SeamCosts(desk, focus, answers, home),
            new TapedRooms(desk, keeper::plan),
            new WalkKeeper(desk, keeper::plan),
            job,
            new BookKeeper(desk, keeper::plan, Path.of(System.getProperty("user.home", "."))),
            pages,
            new Releases(desk, keeper::plan, errands),
            errands,
            new Proofs(desk, answers, errands),
            new Waiting(home));
    parts.watch();
    parts.releases.changed().hear(answers::again);
    parts.releases.changed().hear(job::again);
    return parts;
  }

  private void watch() {
    book.changed().hear(job::again);
    waiting.watch(errands, errands.changed());
    waiting.watch(
        new DeskWaits("Working out the inlay", answers::isWorking, answers::cancel),
        answers.changed());
    waiting.watch(
        new DeskWaits("Making the sheets", this::isMakingSheets, this::stopSheets),
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
  public void hear(Runnable r) {
    for (Signal s :
        List.of(
            bench.desk().changed(),
            bench.focus().changed(),
            pictures.changed(),
            answers.changed(),
            ways.changed(),
            seams.changed(),
            job.changed(),
            book.changed(),
            pages.changed(),
            errands.changed(),
            waiting.changed(),
            releases.changed(),
            proofs.changed())) {
      s.hear(r);
    }
  }

  /** Whether everything shown has been worked out. */
  public boolean isUpToDate() {
    return pictures.isUpToDate() && answers.isUpToDate() && seams.isUpToDate() && !errands.isBusy();
  }

  /** Whether the whole job and its pages have been worked out too. */
  public boolean isAllWorkedOut() {
    return isUpToDate() && !ways.isWorking() && !job.isWorking() && !pages.isWorking();
  }

  @Override
  public void close() {
    errands.close();
    keeper.close();
    pictures.close();
    answers.close();
    ways.close();
    seams.close();
    job.close();
    pages.close();
  }
}
