package slabwright.desk;

import javafx.application.Application;

/** Opens the desk. Not an Application itself, so that a plain class path is enough. */
public final class DeskLauncher {
  private DeskLauncher() {}

  /**
   * Opens the window and returns when it has been closed.
   *
   * @param args a plan to open; may be empty
   */
  public static void open(String[] args) {
    Application.launch(DeskApp.class, args);
  }
}
