package slabwright.desk;

import javafx.geometry.Rectangle2D;
import javafx.stage.Screen;
import javafx.stage.Stage;
import slabwright.desk.model.DeskSettings;

/** Where the window stood and how large it was, kept from one session to the next. */
final class WindowPlace {
  private static final double WIDE = 1440;
  private static final double HIGH = 900;

  private final DeskSettings settings;

  WindowPlace(DeskSettings settings) {
    this.settings = settings;
  }

  double width() {
    return settings.number("width", Math.min(WIDE, room().getWidth()));
  }

  double height() {
    return settings.number("height", Math.min(HIGH, room().getHeight() - 40));
  }

  private static Rectangle2D room() {
    return Screen.getPrimary().getVisualBounds();
  }

  /** Puts the window where it stood, unless no screen shows that place any more. */
  void put(Stage stage) {
    double x = settings.number("x", Double.NaN);
    double y = settings.number("y", Double.NaN);
    if (!Double.isNaN(x) && !Screen.getScreensForRectangle(x + 40, y + 10, 100, 20).isEmpty()) {
      stage.setX(x);
      stage.setY(y);
    }
    stage.setMaximized(settings.isOn("maximized"));
  }

  /** Keeps them; a window over the whole screen keeps the size that it had before. */
  void keep(Stage stage) {
    settings.setOn("maximized", stage.isMaximized());
    if (!stage.isMaximized()) {
      settings.setNumber("width", stage.getScene().getWidth());
      settings.setNumber("height", stage.getScene().getHeight());
      settings.setNumber("x", stage.getX());
      settings.setNumber("y", stage.getY());
    }
  }
}
