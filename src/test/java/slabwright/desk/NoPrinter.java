package slabwright.desk;

import java.util.Optional;

/** A computer without a printer. */
final class NoPrinter implements Printing {
  @Override
  public boolean isReady() {
    return false;
  }

  @Override
  public Optional<PrintRun> ask() {
    return Optional.empty();
  }
}
