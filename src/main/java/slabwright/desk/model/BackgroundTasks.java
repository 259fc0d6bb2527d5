package slabwright.desk.model;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.Function;
import slabwright.project.TaskProgress;
import slabwright.units.Message;
import slabwright.units.Result;

/**
 * Long work that the person asked for (an export, a big picture), one piece after another, off the
 * asking thread. All methods are called on the asking thread; so are {@code done} and the signal.
 */
public final class BackgroundTasks implements ProgressMonitor.ProgressSource, AutoCloseable {
  /** The work itself; it runs off the asking thread. */
  public interface TaskBody<T> {
    /**
     * Does it; what can't be is said as a value.
     *
     * @throws IOException when a file cannot be read or written
     * @throws CancellationException when the steps say that it has been given up
     */
    Result<T> run(TaskProgress steps) throws IOException;
  }

  /**
   * One piece of work.
   *
   * @param words what is done, as in "Saving the sheets"
   * @param failed says that a read or write broke, from what the system says of it
   * @param done told what came of it; not told when it was refused, failed or was given up
   */
  public record BackgroundTask<T>(
      Message words, Function<String, Message> failed, TaskBody<T> work, Consumer<T> done) {}

  private final Desk desk;
  private final Executor home;
  private final Signal changed = new Signal();
  private final Deque<RunningTask<?>> waiting = new ArrayDeque<>();
  private final ExecutorService worker =
      Executors.newSingleThreadExecutor(
          r -> {
            Thread t = new Thread(r, "errand");
            t.setDaemon(true);
            return t;
          });
  private Optional<RunningTask<?>> now = Optional.empty();

  /**
   * A worker with a thread of its own.
   *
   * @param home the asking thread, as an executor
   */
  public BackgroundTasks(Desk desk, Executor home) {
    this.desk = desk;
    this.home = home;
  }

  /** Given when work begins, comes further or ends. */
  public Signal changed() {
    return changed;
  }

  /** Does the errand after those before it. */
  public <T> void run(BackgroundTask<T> errand) {
    waiting.add(new RunningTask<>(errand));
    next();
  }

  private void next() {
    if (now.isEmpty() && !waiting.isEmpty() && !worker.isShutdown()) {
      RunningTask<?> first = waiting.remove();
      now = Optional.of(first);
      worker.execute(first);
    }
    changed.fire();
  }

  @Override
  public boolean isBusy() {
    return now.isPresent();
  }

  @Override
  public Optional<Message> words() {
    return now.map(r -> r.errand.words());
  }

  @Override
  public double share() {
    return now.map(r -> r.share).orElse(-1.0);
  }

  @Override
  public void cancel() {
    now.ifPresent(RunningTask::cancel);
  }

  @Override
  public void close() {
    waiting.clear();
    cancel();
    worker.shutdownNow();
  }

  private final class RunningTask<T> implements Runnable, TaskProgress {
    private final BackgroundTask<T> errand;
    private volatile double share = -1;
    private volatile boolean cancelled;
    private Optional<Thread> thread = Optional.empty();

    RunningTask(BackgroundTask<T> errand) {
      this.errand = errand;
    }

    @Override
    public void run() {
      begin();
      Runnable outcome = outcome();
      finish();
      home.execute(() -> end(outcome));
    }

    /** Works and gives what is to be done with what came of it. */
    private Runnable outcome() {
      try {
        if (cancelled) {
          return () -> {};
        }
        Result<T> result = errand.work().run(this);
        return () -> take(result);
      } catch (IOException e) {
        return () -> desk.refuse(errand.failed().apply(said(e)));
      } catch (RuntimeException e) {
        return () -> desk.refuse(fault(e));
      }
    }

    private synchronized void begin() {
      thread = Optional.of(Thread.currentThread());
    }

    /** No interrupt meant for this work may reach the next. */
    private synchronized void finish() {
      thread = Optional.empty();
      Thread.interrupted();
    }

    private void take(Result<T> result) {
      if (result instanceof Result.Refused<T> refused) {
        desk.refuse(refused.refusals().get(0));
      } else {
        errand.done().accept(result.orThrow());
      }
    }

    private String said(IOException e) {
      return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    }

    private Message fault(RuntimeException e) {
      return Message.of("desk.model.fault.task", errand.words(), UnexpectedFault.text(e));
    }

    private void end(Runnable what) {
      now = Optional.empty();
      if (!cancelled) {
        what.run();
      }
      next();
    }

    synchronized void cancel() {
      cancelled = true;
      thread.ifPresent(Thread::interrupt);
    }

    @Override
    public void report(double done) {
      if (cancelled) {
        throw new CancellationException();
      }
      share = done;
      home.execute(changed::fire);
    }

    @Override
    public boolean isCancelled() {
      return cancelled;
    }
  }
}
