package slabwright.desk;

import java.nio.file.Path;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.stage.Window;
import slabwright.words.Words;

/**
 * What the desk needs of the system around it.
 *
 * @param folders shows a folder
 * @param home the screen's thread, as an executor
 * @param words of the language the person reads
 */
record SystemServices(
    Chooser chooser, Printing printing, Consumer<Path> folders, Executor home, Words words) {
  /** The system's own dialogs. */
  static SystemServices of(Window window, Consumer<Path> folders, Words words) {
    return new SystemServices(
        new WindowChooser(window, words),
        new FxPrinting(window),
        folders,
        Platform::runLater,
        words);
  }
}
