package slabwright.desk.model.compute;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import slabwright.desk.model.Computed;
import slabwright.desk.model.Desk;
import slabwright.desk.model.Signal;
import slabwright.desk.model.UnexpectedFault;
import slabwright.desk.model.Wish;
import slabwright.project.AreaCache;
import slabwright.project.SiteResult;
import slabwright.site.Site;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.work.handover.Cost;

/**
 * All of the site worked out: every floor area, and the work by the shop book, once the plan has
 * rested for a moment. What is dragged comes first: meanwhile it is put off.
 */
public final class SiteComputation implements AutoCloseable {
  /** A plan rests when nothing changed for this long, ms. */
  private static final long REST = 400;

  private record Question(Site site, Path plan) {}

  private record Answer(SiteResult result, Cost cost) {}

  private final Computed<Question, Result<Answer>> job;

  /**
   * Follows the desk.
   *
   * @param plan the file that graphics are relative to
   * @param areas shared with what is computed of the area looked at
   * @param home the asking thread, as an executor
   */
  public SiteComputation(Desk desk, Supplier<Optional<Path>> plan, AreaCache areas, Executor home) {
    job =
        new Computed<Question, Result<Answer>>(
                Computed.Pace.rested("job", REST),
                home,
                q -> work(q, areas),
                answer -> tell(desk, answer),
                UnexpectedFault.told(desk, why -> Message.of("desk.model.fault.site", why)))
            .follow(
                () -> wish(desk, plan.get()).in(desk.opening()),
                desk.siteChanged(),
                desk.changed());
  }

  private static Wish<Question> wish(Desk desk, Optional<Path> plan) {
    if (!desk.isOpen() || desk.site().areas().isEmpty()) {
      return Wish.nothing();
    }
    return desk.isPreviewing()
        ? Wish.pause()
        : Wish.of(plan.map(file -> new Question(desk.site(), file)));
  }

  private static void tell(Desk desk, Result<Answer> answer) {
    if (answer instanceof Result.Refused<Answer> refused) {
      desk.refuse(refused.refusals().get(0));
    }
  }

  public Signal changed() {
    return job.changed();
  }

  /** The last answer; it may be of a plan a moment ago. */
  public Optional<SiteResult> done() {
    return answer(job.value()).map(Answer::result);
  }

  /** The last answer, when it is of the site as it is now. */
  public Optional<SiteResult> current() {
    return answer(job.current()).map(Answer::result);
  }

  /** What the last answer costs by the shop book. */
  public Optional<Cost> cost() {
    return answer(job.value()).map(Answer::cost);
  }

  private static Optional<Answer> answer(Optional<Result<Answer>> last) {
    return last.filter(a -> a instanceof Result.Ok).map(Result::orThrow);
  }

  public boolean isWorking() {
    return job.isBusy();
  }

  public void cancel() {
    job.cancel();
  }

  /** Works everything out again, as after a graphic changed on disk. */
  public void recompute() {
    job.again();
  }

  private static Result<Answer> work(Question q, AreaCache areas) {
    try {
      return SiteResult.compute(q.site(), q.plan(), areas, Thread.currentThread()::isInterrupted)
          .map(r -> new Answer(r, Cost.of(r.work())));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() {
    job.close();
  }
}
