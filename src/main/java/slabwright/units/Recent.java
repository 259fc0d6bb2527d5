package slabwright.units;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/**
 * The last few values worked out, by what they depend on. Two threads that ask for one value get it
 * from one computation. What fails or is given up is not kept.
 */
public final class Recent<K, V> {
  private final Map<K, FutureTask<V>> values = new LinkedHashMap<>(16, 0.75f, true);
  private final int room;

  /** Keeps the {@code room} values asked for last. */
  public Recent(int room) {
    this.room = room;
  }

  /**
   * The value of a key.
   *
   * @param make works it out when it is not at hand; what it throws is thrown here
   * @throws CancellationException when the thread is interrupted while another one works it out
   */
  public V get(K key, Supplier<V> make) {
    while (true) {
      FutureTask<V> mine = new FutureTask<>(make::get);
      FutureTask<V> task = keep(key, mine);
      if (task == mine) {
        mine.run();
      }
      try {
        return task.get();
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new CancellationException();
      } catch (ExecutionException e) {
        drop(key, task);
        if (task == mine) {
          throw unchecked(e.getCause());
        }
      }
    }
  }

  private synchronized FutureTask<V> keep(K key, FutureTask<V> mine) {
    FutureTask<V> there = values.get(key);
    if (there != null) {
      return there;
    }
    values.put(key, mine);
    if (values.size() > room) {
      values.remove(values.keySet().iterator().next());
    }
    return mine;
  }

  private synchronized void drop(K key, FutureTask<V> failed) {
    values.remove(key, failed);
  }

  /** Forgets all. */
  public synchronized void clear() {
    values.clear();
  }

  private static RuntimeException unchecked(Throwable cause) {
    if (cause instanceof Error error) {
      throw error;
    }
    return cause instanceof RuntimeException known ? known : new IllegalStateException(cause);
  }
}
