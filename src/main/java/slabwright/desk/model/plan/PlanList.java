package slabwright.desk.model.plan;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import slabwright.desk.model.Computed;
import slabwright.desk.model.Desk;
import slabwright.desk.model.DeskSettings;
import slabwright.desk.model.Signal;
import slabwright.desk.model.UnexpectedFault;
import slabwright.project.plan.PlanFiles;
import slabwright.units.Message;

/** The plans that one can go on with, as they lie on disk; they may lie on a slow server. */
public final class PlanList implements AutoCloseable {
  /**
   * A plan that was saved.
   *
   * @param changed when it was last written; empty when the system does not say
   */
  public record SavedPlan(Path file, Optional<Instant> changed) {}

  /**
   * What was found.
   *
   * @param left what was not saved when the program last ended
   * @param saved recent plans, latest first; those that are gone are left out
   */
  public record Found(List<PlanFiles.LeftPlan> left, List<SavedPlan> saved) {}

  private final DeskSettings settings;
  private final Computed<List<Path>, Found> plans;

  /**
   * None yet.
   *
   * @param home the asking thread, as an executor
   */
  public PlanList(Desk desk, DeskSettings settings, PlanStorage storage, Executor home) {
    this.settings = settings;
    plans =
        new Computed<>(
            Computed.Pace.hurried("plan-list"),
            home,
            recent -> find(recent, storage),
            UnexpectedFault.told(desk, why -> Message.of("desk.model.fault.plan-list", why)));
  }

  /** Looks for them again; until that is done none is known. */
  public void look() {
    plans.ask(settings.recent());
  }

  public Signal changed() {
    return plans.changed();
  }

  /** What was found when it was last looked; empty while it is looked again. */
  public Optional<Found> found() {
    return plans.current();
  }

  public boolean isWorking() {
    return plans.isBusy();
  }

  private static Found find(List<Path> recent, PlanStorage storage) {
    List<Path> there = recent.stream().filter(Files::isReadable).toList();
    return new Found(
        storage.recoverable(there),
        there.stream().map(p -> new SavedPlan(p, lastWritten(p))).toList());
  }

  private static Optional<Instant> lastWritten(Path file) {
    try {
      return Optional.of(Files.getLastModifiedTime(file).toInstant());
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  @Override
  public void close() {
    plans.close();
  }
}
