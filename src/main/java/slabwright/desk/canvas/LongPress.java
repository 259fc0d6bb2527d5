package slabwright.desk.canvas;

import javafx.animation.PauseTransition;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.util.Duration;

/**
 * Tells a right-click, and a thumb or pointer that rests where it was pressed, from a drag; both
 * ask for the same menu.
 */
final class LongPress {
  private static final Duration LONG = Duration.millis(550);
  private static final double STILL = 7;

  /** What is asked for. */
  interface Menu {
    /** At a place of the slab, pixels in it, and where that is on the screen. */
    void open(double x, double y, double screenX, double screenY);
  }

  private final PauseTransition rest = new PauseTransition(LONG);
  private final Menu menu;
  private double x;
  private double y;
  private boolean still;

  LongPress(Menu menu) {
    this.menu = menu;
  }

  /**
   * A button goes down.
   *
   * @param rests whether resting there asks for the menu, as it does for a thumb with nothing in
   *     hand
   */
  void pressed(MouseEvent e, boolean rests) {
    x = e.getX();
    y = e.getY();
    still = true;
    if (rests && e.getButton() == MouseButton.PRIMARY) {
      rest.setOnFinished(f -> open(e));
      rest.playFromStart();
    }
  }

  void dragged(MouseEvent e) {
    if (Math.hypot(e.getX() - x, e.getY() - y) > STILL) {
      still = false;
      rest.stop();
    }
  }

  void released(MouseEvent e) {
    rest.stop();
    if (still && e.getButton() == MouseButton.SECONDARY) {
      open(e);
    }
  }

  private void open(MouseEvent e) {
    still = false;
    menu.open(x, y, e.getScreenX(), e.getScreenY());
  }
}
