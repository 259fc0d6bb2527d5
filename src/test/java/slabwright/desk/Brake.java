package slabwright.desk;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executor;
import javafx.application.Platform;

/**
 * Holds long work at its next step while it is on, so that a test can cancel it half-way; the
 * cancel lets it go.
 */
final class Brake implements Executor {
  private volatile boolean on;

  void set(boolean held) {
    on = held;
  }

  @Override
  public void execute(Runnable r) {
    if (on && Thread.currentThread().getName().equals("errand")) {
      try {
        new CountDownLatch(1).await();
      } catch (InterruptedException cancelled) {
        on = false;
        Thread.currentThread().interrupt();
      }
    }
    Platform.runLater(r);
  }
}
