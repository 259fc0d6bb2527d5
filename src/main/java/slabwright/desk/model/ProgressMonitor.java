package slabwright.desk.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import slabwright.units.Message;

/** What the person waits for: whatever has been worked on for longer than half a second. */
public final class ProgressMonitor {
  /** How long work goes on unsaid, ms. */
  public static final long PATIENCE = 500;

  /** Something that may take long. */
  public interface ProgressSource {
    boolean isBusy();

    /** What is being done; empty while nothing is. */
    Optional<Message> words();

    /** How much is done, 0 to 1; negative while that is not known. */
    double share();

    void cancel();
  }

  private static final class Watch {
    private final ProgressSource source;
    private boolean busy;
    private boolean taking;
    private long number;

    Watch(ProgressSource source) {
      this.source = source;
    }
  }

  private final Executor later;
  private final List<Watch> watches = new ArrayList<>();
  private final Signal changed = new Signal();

  /**
   * Watches nothing yet.
   *
   * @param home the asking thread, as an executor
   */
  public ProgressMonitor(Executor home) {
    later = CompletableFuture.delayedExecutor(PATIENCE, TimeUnit.MILLISECONDS, home);
  }

  /** Watches one more, looked at when any of the signals is given; earlier ones are shown first. */
  public void watch(ProgressSource source, Signal... whenChanged) {
    Watch w = new Watch(source);
    watches.add(w);
    for (Signal s : whenChanged) {
      s.subscribe(() -> look(w));
    }
  }

  /** Given when what is shown may have changed. */
  public Signal changed() {
    return changed;
  }

  private void look(Watch w) {
    boolean busy = w.source.isBusy();
    if (busy && !w.busy) {
      w.number++;
      long mine = w.number;
      later.execute(() -> grow(w, mine));
    } else if (!busy) {
      w.taking = false;
      w.number++;
    }
    w.busy = busy;
    changed.fire();
  }

  private void grow(Watch w, long mine) {
    if (w.number == mine && w.source.isBusy()) {
      w.taking = true;
      changed.fire();
    }
  }

  /** What to show now; empty while nothing takes long. */
  public Optional<ProgressSource> shown() {
    return watches.stream()
        .filter(w -> w.taking && w.source.isBusy())
        .map(w -> w.source)
        .findFirst();
  }
}
