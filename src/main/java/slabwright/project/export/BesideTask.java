package slabwright.project.export;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;

/**
 * A part of an export that is made on another core while the asking thread makes its own.
 *
 * @param task that makes it
 */
record BesideTask<T>(ForkJoinTask<T> task) {
  /** Makes a part of pure values. */
  @FunctionalInterface
  interface Maker<T> {
    /** Makes it. */
    T make() throws IOException;
  }

  /** Starts a part. */
  static <T> BesideTask<T> start(Maker<T> maker) {
    return new BesideTask<>(ForkJoinPool.commonPool().submit(() -> unchecked(maker)));
  }

  private static <T> T unchecked(Maker<T> maker) {
    try {
      return maker.make();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The part when it is made; helps with it until then.
   *
   * @throws IOException when it broke on a file
   */
  T join() throws IOException {
    try {
      return task.join();
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }
}
