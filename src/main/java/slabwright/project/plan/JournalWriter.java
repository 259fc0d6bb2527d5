package slabwright.project.plan;

import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import slabwright.site.Site;
import slabwright.store.Journal;
import slabwright.units.Message;

/** Writes the state of a plan to its journal after every edit, on a thread of its own. */
public final class JournalWriter implements AutoCloseable {
  /** How long an edit waits for the one before it to be on disk, ms. */
  private static final long SLOW = 500;

  /** How long closing waits for what is still to be written, s. */
  private static final long LAST = 5;

  private final Consumer<Message> fault;
  private final ExecutorService writer =
      Executors.newSingleThreadExecutor(
          r -> {
            Thread t = new Thread(r, "journal");
            t.setDaemon(true);
            return t;
          });
  private final AtomicReference<Optional<Entry>> next = new AtomicReference<>(Optional.empty());
  private Future<?> written = CompletableFuture.completedFuture(null);

  /** What is to be journalled; a newer one stands in for it as long as it has not been begun. */
  private record Entry(Journal journal, Site site) {}

  /**
   * A writer.
   *
   * @param fault told why a journal could not be written or cleared; on the writer's thread or the
   *     caller's
   */
  public JournalWriter(Consumer<Message> fault) {
    this.fault = fault;
  }

  /** Writes a state soon; the state before it is on disk by then, unless the disk is very slow. */
  public void write(PlanLocation at, Site site) {
    awaitLast();
    next.set(Optional.of(new Entry(at.journal(), site)));
    written = writer.submit(() -> next.getAndSet(Optional.empty()).ifPresent(this::write));
  }

  private void awaitLast() {
    try {
      written.get(SLOW, TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (ExecutionException e) {
      fault.accept(Message.of("project.plan.journal-fault", String.valueOf(e.getCause())));
    } catch (TimeoutException e) {
      // It is still being written; the newest state takes the place of whatever waits behind it.
      return;
    }
  }

  private void write(Entry entry) {
    try {
      entry.journal().write(entry.site());
    } catch (IOException e) {
      fault.accept(Message.of("project.plan.journal-not-written", String.valueOf(e.getMessage())));
    }
  }

  /** Forgets what is waiting, and the journal: the plan has been saved. */
  public void clear(PlanLocation at) {
    next.set(Optional.empty());
    writer.execute(() -> clear(at.journal()));
  }

  private void clear(Journal journal) {
    try {
      journal.clear();
    } catch (IOException e) {
      fault.accept(Message.of("project.plan.journal-not-cleared", String.valueOf(e.getMessage())));
    }
  }

  /** Waits until everything asked for is on disk. */
  @Override
  public void close() {
    writer.shutdown();
    try {
      if (!writer.awaitTermination(LAST, TimeUnit.SECONDS)) {
        writer.shutdownNow();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
