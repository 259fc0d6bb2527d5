package slabwright.desk;

import java.util.function.BooleanSupplier;
import slabwright.desk.model.ProgressMonitor;

/** Work the desk does by itself, as something to wait for. */
record ComputationProgress(String words, BooleanSupplier busy, Runnable stop)
    implements ProgressMonitor.ProgressSource {
  @Override
  public boolean isBusy() {
    return busy.getAsBoolean();
  }

  @Override
  public double share() {
    return -1;
  }

  @Override
  public void cancel() {
    stop.run();
  }
}
