package slabwright.project;

import java.util.concurrent.CancellationException;

/** Through which long work says how far it is, and hears that it has been given up. */
public interface TaskProgress {
  /**
   * Says how far the work is.
   *
   * @param share done, 0 to 1
   * @throws CancellationException when it has been given up
   */
  void report(double share);

  /** Whether it has been given up. */
  boolean isCancelled();

  /** Of work that nobody watches and nobody gives up. */
  static TaskProgress untold() {
    return new TaskProgress() {
      @Override
      public void report(double share) {}

      @Override
      public boolean isCancelled() {
        return false;
      }
    };
  }
}
