package slabwright.project.plan;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * Writes files on a thread of its own, one after another in the order in which they were asked for.
 * What is asked again before it was begun is done once, by the newest and in its turn. All methods
 * are called on the asking thread, and what came of it is told there.
 */
public final class BackgroundWriter implements AutoCloseable {
  /** How long closing waits for what is still to be written, s. */
  private static final long LAST = 30;

  /** Writes something. */
  @FunctionalInterface
  public interface FileWork<T> {
    /**
     * Does it, off the asking thread.
     *
     * @throws IOException when it can't be written
     */
    T run() throws IOException;
  }

  private record Asked<T>(FileWork<T> work, Consumer<T> done, Consumer<String> failed) {
    /** Does it and gives what is then to be told. */
    Runnable outcome() {
      try {
        T made = work.run();
        return () -> done.accept(made);
      } catch (IOException | RuntimeException e) {
        String why = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
        return () -> failed.accept(why);
      }
    }
  }

  private final Executor home;
  private final ExecutorService writer;
  private final Map<Object, Asked<?>> waiting = new LinkedHashMap<>();
  private final Queue<Runnable> untold = new ConcurrentLinkedQueue<>();
  private final AtomicInteger open = new AtomicInteger();
  private Optional<Object> running = Optional.empty();

  /**
   * A writer.
   *
   * @param name of its thread
   * @param home the asking thread, as an executor
   */
  public BackgroundWriter(String name, Executor home) {
    this.home = home;
    writer =
        Executors.newSingleThreadExecutor(
            r -> {
              Thread t = new Thread(r, name);
              t.setDaemon(true);
              return t;
            });
  }

  /**
   * Asks for something to be written; once closed, nothing is.
   *
   * @param key what is written, such as its file: one that waits under it gives way to this
   * @param done told what came of it
   * @param failed told why it could not be written
   */
  public <T> void write(Object key, FileWork<T> work, Consumer<T> done, Consumer<String> failed) {
    if (writer.isShutdown()) {
      return;
    }
    synchronized (waiting) {
      waiting.remove(key);
      waiting.put(key, new Asked<>(work, done, failed));
    }
    open.incrementAndGet();
    writer.execute(this::next);
  }

  /**
   * Waits until nothing waits or is being written under a key.
   *
   * @param most how long at most, ms
   */
  void await(Object key, long most) {
    await(() -> waiting.containsKey(key) || running.equals(Optional.of(key)), most);
  }

  /**
   * Waits, on any other thread, until nothing waits or is being written.
   *
   * @param most how long at most, ms
   */
  public void awaitAll(long most) {
    await(() -> !waiting.isEmpty() || running.isPresent(), most);
  }

  private void await(BooleanSupplier more, long most) {
    long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(most);
    synchronized (waiting) {
      while (more.getAsBoolean()) {
        long left = TimeUnit.NANOSECONDS.toMillis(end - System.nanoTime());
        if (left <= 0) {
          return;
        }
        try {
          waiting.wait(left);
        } catch (InterruptedException e) {
          Thread.currentThread().interrupt();
          return;
        }
      }
    }
  }

  /** Whether something is still to be written or to be told. */
  public boolean isBusy() {
    return open.get() > 0;
  }

  private void next() {
    first().map(Asked::outcome).ifPresent(untold::add);
    synchronized (waiting) {
      running = Optional.empty();
      waiting.notifyAll();
    }
    untold.add(open::decrementAndGet);
    home.execute(this::tell);
  }

  private Optional<Asked<?>> first() {
    synchronized (waiting) {
      running = waiting.keySet().stream().findFirst();
      return running.map(waiting::remove);
    }
  }

  private void tell() {
    for (Runnable told = untold.poll(); told != null; told = untold.poll()) {
      told.run();
    }
  }

  /** Waits until everything asked for is on disk, and tells what came of it. */
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
    tell();
  }
}
