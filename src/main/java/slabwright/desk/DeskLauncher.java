package slabwright.desk;

import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Application;

/** Opens the desk. Not an Application itself, so that a plain class path is enough. */
public final class DeskLauncher {
  /** Held, as a logger that nobody holds forgets its level. */
  private static final Logger TOOLKIT = Logger.getLogger("javafx");

  private DeskLauncher() {}

  /**
   * Opens the window and returns when it has been closed.
   *
   * @param args a plan to open; may be empty
   */
  public static void open(String[] args) {
    // It warns of the plain class path, which is meant; the terminal is for our own words.
    TOOLKIT.setLevel(Level.SEVERE);
    Application.launch(DeskApp.class, args);
  }
}
