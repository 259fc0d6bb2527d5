package slabwright.desk;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import slabwright.desk.model.ProgressMonitor;
import slabwright.units.Message;

/** Work the desk does by itself, as something to wait for. */
record ComputationProgress(Optional<Message> words, BooleanSupplier busy, Runnable stop)
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
