package slabwright.desk;

import java.util.concurrent.Executor;
import javafx.application.Platform;
import javafx.stage.Window;
import slabwright.words.Words;

/**
 * What the desk needs of the system around it.
 *
 * @param home the screen's thread, as an executor
 * @param words of the language the person reads
 */
record SystemServices(Chooser chooser, Printing printing, Executor home, Words words) {
  /** The system's own dialogs. */
  static SystemServices of(Window window, Words words) {
    return new SystemServices(
        new WindowChooser(window, words), new FxPrinting(window), Platform::runLater, words);
  }
}
