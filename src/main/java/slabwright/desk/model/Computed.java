package slabwright.desk.model;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * A value worked out from a key off the asking thread, of which only the newest is wanted. The last
 * value stays while another is worked out; {@link #truth} says what it is then. What it is to be is
 * either told, by {@link #ask}, or followed: a {@link Wish} is asked for whenever a signal is
 * given, and it does not matter in which order signals come. All methods are called on one thread,
 * the asking one; on it values are handed over and the signal is given.
 */
public final class Computed<K, V> implements AutoCloseable {
  /**
   * How it is worked on.
   *
   * @param name of its thread
   * @param patient whether it finishes what it has in hand and hands it over before it turns to the
   *     newest key, so that something moves while keys keep coming; else it gives up at once what
   *     is no longer asked
   * @param rest how long a key must stand before work on it begins, ms
   */
  public record Pace(String name, boolean patient, long rest) {
    public static Pace patient(String name) {
      return new Pace(name, true, 0);
    }

    public static Pace hurried(String name) {
      return new Pace(name, false, 0);
    }

    public static Pace rested(String name, long ms) {
      return new Pace(name, false, ms);
    }
  }

  /** What the last value is to the newest key. */
  public enum Truth {
    /** There is none and none is worked out. */
    NONE,
    BEING_COMPUTED,
    /** It is of an earlier key: work on the newest was given up or failed. */
    OLDER,
    TRUE
  }

  private record Kept<K, V>(K key, V value) {}

  private final Pace pace;
  private final ExecutorService worker;
  private final Executor home;
  private final Function<K, V> work;
  private final Consumer<V> arrived;
  private final Consumer<RuntimeException> fault;
  private final Signal changed = new Signal();
  private Optional<Supplier<Wish<K>>> followed = Optional.empty();
  private Optional<Object> scope = Optional.empty();
  private Optional<K> asked = Optional.empty();
  private Optional<K> next = Optional.empty();
  private Optional<Kept<K, V>> kept = Optional.empty();
  private Future<?> running;
  private long number;
  private boolean busy;
  private boolean paused;

  /**
   * With a thread of its own.
   *
   * @param home where values are handed over: the asking thread
   * @param work off that thread; it should look at times whether its thread is interrupted
   * @param fault told when the work fails on a key nobody has replaced
   */
  public Computed(Pace pace, Executor home, Function<K, V> work, Consumer<RuntimeException> fault) {
    this(pace, home, work, v -> {}, fault);
  }

  /**
   * The same.
   *
   * @param arrived told each value before the signal is given
   */
  public Computed(
      Pace pace,
      Executor home,
      Function<K, V> work,
      Consumer<V> arrived,
      Consumer<RuntimeException> fault) {
    this.pace = pace;
    this.home = home;
    this.work = work;
    this.arrived = arrived;
    this.fault = fault;
    this.worker =
        Executors.newSingleThreadExecutor(
            r -> {
              Thread t = new Thread(r, pace.name());
              t.setDaemon(true);
              return t;
            });
  }

  /** Is what the wish says from now on, asked again whenever one of the signals is given. */
  public Computed<K, V> follow(Supplier<Wish<K>> wish, Signal... when) {
    followed = Optional.of(wish);
    for (Signal s : when) {
      s.subscribe(this::look);
    }
    return this;
  }

  /** Asks for the wish now. */
  public void look() {
    followed.ifPresent(w -> want(w.get()));
  }

  private void want(Wish<K> wish) {
    if (!wish.scope().equals(scope)) {
      scope = wish.scope();
      drop();
    }
    switch (wish.kind()) {
      case NOTHING -> drop();
      case PAUSE -> pause();
      case AS_IT_IS -> forgetWhatWasGivenUp();
      case KEY -> {
        if (paused || !asked.equals(wish.key())) {
          wish.key().ifPresent(this::ask);
        }
      }
    }
  }

  private void drop() {
    boolean shown = kept.isPresent() || isBusy();
    stop();
    asked = Optional.empty();
    kept = Optional.empty();
    if (shown) {
      changed.fire();
    }
  }

  private void pause() {
    if (busy) {
      stop();
      paused = true;
    }
  }

  private void forgetWhatWasGivenUp() {
    if (!isBusy() && truth() != Truth.TRUE) {
      asked = Optional.empty();
    }
  }

  /**
   * Works it out of this key, even when it is the last one again; what was asked before and not
   * begun is forgotten. Once closed, nothing is asked.
   */
  public void ask(K key) {
    if (worker.isShutdown()) {
      return;
    }
    boolean was = isBusy();
    paused = false;
    asked = Optional.of(key);
    if (busy && pace.patient()) {
      next = asked;
    } else {
      interrupt();
      begin(key);
    }
    if (!was) {
      changed.fire();
    }
  }

  /** Works it out again, as after something changed that is not in the key. */
  public void again() {
    asked = Optional.empty();
    look();
  }

  private void begin(K key) {
    busy = true;
    number++;
    long mine = number;
    running = worker.submit(() -> run(mine, key));
  }

  /** Gives up what is being worked on; the last value stays. */
  public void cancel() {
    boolean was = isBusy();
    stop();
    if (was) {
      changed.fire();
    }
  }

  private void stop() {
    interrupt();
    number++;
    busy = false;
    paused = false;
    next = Optional.empty();
  }

  private void interrupt() {
    if (running != null) {
      running.cancel(true);
    }
  }

  private void run(long mine, K key) {
    try {
      Thread.sleep(pace.rest());
      V v = work.apply(key);
      home.execute(() -> deliver(mine, () -> take(key, v)));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (RuntimeException e) {
      home.execute(() -> deliver(mine, () -> failed(e)));
    }
  }

  private void deliver(long mine, Runnable what) {
    if (mine != number || worker.isShutdown()) {
      return;
    }
    busy = false;
    Optional<K> waiting = next;
    next = Optional.empty();
    waiting.ifPresent(this::begin);
    what.run();
  }

  private void take(K key, V v) {
    kept = Optional.of(new Kept<>(key, v));
    arrived.accept(v);
    changed.fire();
  }

  private void failed(RuntimeException e) {
    fault.accept(e);
    changed.fire();
  }

  /** Given when there is another value or none, and when work on one begins or is given up. */
  public Signal changed() {
    return changed;
  }

  /** The last value; see {@link #truth}. */
  public Optional<V> value() {
    return kept.map(Kept::value);
  }

  /** The last value when it is of the newest key. */
  public Optional<V> current() {
    return truth() == Truth.TRUE ? value() : Optional.empty();
  }

  /** The value when it is of this key, whatever was asked since. */
  public Optional<V> valueOf(K key) {
    return kept.filter(k -> k.key().equals(key)).map(Kept::value);
  }

  public Truth truth() {
    if (isBusy()) {
      return Truth.BEING_COMPUTED;
    }
    if (kept.isEmpty()) {
      return Truth.NONE;
    }
    return kept.map(Kept::key).equals(asked) ? Truth.TRUE : Truth.OLDER;
  }

  /** Whether a value is still to come. */
  public boolean isBusy() {
    return busy || paused;
  }

  @Override
  public void close() {
    worker.shutdownNow();
  }
}
