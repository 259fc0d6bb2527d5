package slabwright.desk;

import java.util.concurrent.Executor;
import javafx.application.Platform;
import javafx.stage.Window;

/**
 * What the desk needs of the system around it.
 *
 * @param home the screen's thread, as an executor
 */
record SystemServices(Chooser chooser, Printing printing, Executor home) {
  /** The system's own dialogs. */
  static SystemServices of(Window window) {
    return new SystemServices(
        new WindowChooser(window), new FxPrinting(window), Platform::runLater);
  }
}
