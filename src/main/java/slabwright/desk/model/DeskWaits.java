package slabwright.desk.model;

import java.util.function.BooleanSupplier;

/** Work the desk does by itself, as something to wait for. */
record DeskWaits(String words, BooleanSupplier busy, Runnable stop) implements Waiting.Source {
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
