package slabwright.desk.model.compute;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import slabwright.desk.model.Desk;
import slabwright.desk.model.Latest;
import slabwright.desk.model.Signal;
import slabwright.desk.model.UnexpectedFault;
import slabwright.project.AreaCache;
import slabwright.project.SiteResult;
import slabwright.site.Site;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.work.handover.Cost;

/**
 * All of the site worked out: every floor area, and the work by the shop book. Asked for when the
 * plan has rested for a moment.
 */
public final class SiteComputation implements AutoCloseable {
  /** A plan rests when nothing changed for this long, ms. */
  private static final long REST = 400;

  private record Question(Site site, Path plan, AreaCache areas) {}

  private record Answer(SiteResult result, Cost cost) {}

  private final Desk desk;
  private final Supplier<Optional<Path>> plan;
  private final AreaCache areas;
  private final Signal changed = new Signal();
  private final Latest<Question, Result<Answer>> worker;
  private Optional<SiteResult> done = Optional.empty();
  private Optional<Cost> cost = Optional.empty();
  private int opening;
  private boolean givenUp;
  private boolean paused;

  /**
   * Listens to the desk.
   *
   * @param plan the file that graphics are relative to
   * @param areas shared with what is computed of the area looked at
   * @param home the asking thread, as an executor
   */
  public SiteComputation(Desk desk, Supplier<Optional<Path>> plan, AreaCache areas, Executor home) {
    this.desk = desk;
    this.plan = plan;
    this.areas = areas;
    worker =
        new Latest<>(
            "job",
            false,
            home,
            SiteComputation::work,
            this::take,
            e -> desk.refuse(Message.of("desk.model.fault.site", UnexpectedFault.text(e))));
    desk.siteChanged().subscribe(this::look);
    desk.changed().subscribe(this::pauseWhilePreviewing);
  }

  public Signal changed() {
    return changed;
  }

  /** The last answer; it may be of a plan a moment ago. */
  public Optional<SiteResult> done() {
    return done;
  }

  /** The last answer, when it is of the site as it is now. */
  public Optional<SiteResult> current() {
    return isWorking() || givenUp ? Optional.empty() : done;
  }

  /** What the last answer costs by the shop book. */
  public Optional<Cost> cost() {
    return cost;
  }

  public boolean isWorking() {
    return worker.isBusy() || paused;
  }

  public void cancel() {
    givenUp |= isWorking();
    paused = false;
    worker.cancel();
    changed.fire();
  }

  /** Works everything out again, as after a graphic changed on disk. */
  public void recompute() {
    look();
  }

  /** What is dragged comes first; the job is begun again when it is let go. */
  private void pauseWhilePreviewing() {
    if (desk.isPreviewing() && worker.isBusy()) {
      worker.cancel();
      paused = true;
    } else if (!desk.isPreviewing() && paused) {
      look();
    }
  }

  private void look() {
    paused = false;
    if (opening != desk.opening()) {
      opening = desk.opening();
      done = Optional.empty();
      cost = Optional.empty();
    }
    Optional<Path> file = plan.get();
    givenUp = false;
    if (!desk.isOpen() || desk.site().areas().isEmpty() || file.isEmpty()) {
      worker.cancel();
      done = Optional.empty();
      cost = Optional.empty();
    } else {
      worker.ask(new Question(desk.site(), file.get(), areas));
    }
    changed.fire();
  }

  private void take(Result<Answer> d) {
    if (d instanceof Result.Refused<Answer> refused) {
      done = Optional.empty();
      cost = Optional.empty();
      desk.refuse(refused.refusals().get(0));
    } else {
      done = Optional.of(d.orThrow().result());
      cost = Optional.of(d.orThrow().cost());
    }
    changed.fire();
  }

  private static Result<Answer> work(Question q) {
    try {
      Thread.sleep(REST);
      return SiteResult.compute(
              q.site(), q.plan(), q.areas(), Thread.currentThread()::isInterrupted)
          .map(r -> new Answer(r, Cost.of(r.work())));
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
