package slabwright.desk;

import java.util.concurrent.Executor;
import javafx.application.Platform;

/**
 * Holds work off the JavaFX thread at its next step while it is on, so that a test can look at the
 * window meanwhile, or cancel it half-way; the cancel lets it go.
 */
final class Brake implements Executor {
  private final String thread;
  private boolean on;

  /**
   * A brake that is off.
   *
   * @param thread name of the thread that is held
   */
  Brake(String thread) {
    this.thread = thread;
  }

  synchronized void set(boolean held) {
    on = held;
    notifyAll();
  }

  private synchronized void hold() {
    while (on) {
      try {
        wait();
      } catch (InterruptedException cancelled) {
        on = false;
        Thread.currentThread().interrupt();
      }
    }
  }

  @Override
  public void execute(Runnable r) {
    if (Thread.currentThread().getName().equals(thread)) {
      hold();
    }
    Platform.runLater(r);
  }
}
