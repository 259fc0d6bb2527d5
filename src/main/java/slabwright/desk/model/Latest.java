package slabwright.desk.model;

import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Works on the latest question only, off the asking thread. A newer question stops work on an older
 * one; only the newest answer is handed over, on the executor given.
 */
public final class Latest<Q, A> implements AutoCloseable {
  private final ExecutorService worker;
  private final Executor home;
  private final Function<Q, A> work;
  private final Consumer<A> answer;
  private final Consumer<RuntimeException> fault;
  private final AtomicLong asked = new AtomicLong();
  private final AtomicLong answered = new AtomicLong();
  private Future<?> running;

  /**
   * A worker with a thread of its own.
   *
   * @param home where answers are handed over
   * @param fault told when the work fails on a question nobody has replaced
   */
  public Latest(
      String name,
      Executor home,
      Function<Q, A> work,
      Consumer<A> answer,
      Consumer<RuntimeException> fault) {
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

  /** Asks; what was asked before is given up. */
  public void ask(Q question) {
    long number = asked.incrementAndGet();
    if (running != null) {
      running.cancel(true);
    }
    running = worker.submit(() -> run(number, question));
  }

  /** Gives up what is being worked on. */
  public void cancel() {
    answered.set(asked.incrementAndGet());
    if (running != null) {
      running.cancel(true);
    }
  }

  /** Whether an answer is still to come. */
  public boolean isBusy() {
    return answered.get() < asked.get();
  }

  private void run(long number, Q question) {
    try {
      A a = work.apply(question);
      home.execute(() -> deliver(number, () -> answer.accept(a)));
    } catch (RuntimeException e) {
      home.execute(() -> deliver(number, () -> fault.accept(e)));
    }
  }

  private void deliver(long number, Runnable what) {
    if (number == asked.get()) {
      answered.set(number);
      what.run();
    }
  }

  @Override
  public void close() {
    worker.shutdownNow();
  }
}
