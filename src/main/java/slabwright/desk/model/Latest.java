package slabwright.desk.model;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Works on the latest question only, off the asking thread. A patient one finishes what it has in
 * hand and hands it over before it turns to the newest question, so that something moves while
 * questions keep coming; an impatient one gives up at once what is no longer asked. Answers are
 * handed over on the executor given. All methods are called on one thread, the asking one.
 */
public final class Latest<Q, A> implements AutoCloseable {
  private final ExecutorService worker;
  private final Executor home;
  private final Function<Q, A> work;
  private final Consumer<A> answer;
  private final Consumer<RuntimeException> fault;
  private final boolean patient;
  private Optional<Q> next = Optional.empty();
  private Future<?> running;
  private long number;
  private boolean busy;

  /**
   * A worker with a thread of its own.
   *
   * @param home where answers are handed over: the asking thread
   * @param fault told when the work fails on a question nobody has replaced
   */
  public Latest(
      String name,
      boolean patient,
      Executor home,
      Function<Q, A> work,
      Consumer<A> answer,
      Consumer<RuntimeException> fault) {
    this.patient = patient;
    this.home = home;
    this.work = work;
    this.answer = answer;
    this.fault = fault;
    this.worker =
        Executors.newSingleThreadExecutor(
            r -> {
              Thread t = new Thread(r, name);
              t.setDaemon(true);
              return t;
            });
  }

  /** Asks; what was asked before and not begun is forgotten. Once closed, nothing is asked. */
  public void ask(Q question) {
    if (worker.isShutdown()) {
      return;
    }
    if (busy && patient) {
      next = Optional.of(question);
      return;
    }
    stop();
    begin(question);
  }

  private void begin(Q question) {
    busy = true;
    number++;
    long mine = number;
    running = worker.submit(() -> run(mine, question));
  }

  /** Gives up what is being worked on. */
  public void cancel() {
    stop();
    number++;
    busy = false;
    next = Optional.empty();
  }

  private void stop() {
    if (running != null) {
      running.cancel(true);
    }
  }

  /** Whether an answer is still to come. */
  public boolean isBusy() {
    return busy;
  }

  private void run(long mine, Q question) {
    try {
      A a = work.apply(question);
      home.execute(() -> deliver(mine, () -> answer.accept(a)));
    } catch (RuntimeException e) {
      home.execute(() -> deliver(mine, () -> fault.accept(e)));
    }
  }

  private void deliver(long mine, Runnable what) {
    if (mine != number || worker.isShutdown()) {
      return;
    }
    busy = false;
    Optional<Q> waiting = next;
    next = Optional.empty();
    waiting.ifPresent(this::begin);
    what.run();
  }

  @Override
  public void close() {
    worker.shutdownNow();
  }
}
