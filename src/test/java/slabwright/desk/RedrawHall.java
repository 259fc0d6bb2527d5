package slabwright.desk;

import java.util.concurrent.TimeoutException;
import javafx.scene.input.KeyCode;

/**
 * The reading hall of the tram hall sample: its walls, its doorways and what the site is called.
 */
final class RedrawHall {
  static final double FOOT = 304.8;

  private final DeskGestures hands;

  RedrawHall(DeskGestures hands) {
    this.hands = hands;
  }

  void walls() throws TimeoutException {
    hands.click("start-tape");
    hands.line("52' 6\"").line("l 15' 8\"").line("l 5'").line("r 19' 11\"");
    hands.line("l 47' 6\"").line("l 35' 7\"").press(KeyCode.ENTER);
    hands.fill("area-name", "Reading hall");
  }

  void site() throws TimeoutException {
    hands.fill("site-name-field", "Tram Hall Library");
    hands.fill("site-note", "invented");
    hands.fill("site-start", "2026-12-07 07:30");
    hands.fill("contractor-name", "Sound Slab Floors (invented)");
    hands.fill("contractor-contact", "K. R. (invented)").fill("contractor-phone", "555 0100");
    hands.fill("client-name", "Tram Hall Trust (invented)");
    hands.fill("client-contact", "A. Castell (invented)").fill("client-phone", "555 0117");
    hands.fill("client-address", "1 Depot Row; Invented Town");
  }

  void doorways() throws TimeoutException {
    hands.click("tool-DOORWAY").line("9' 4\"").clickSlab(30 * FOOT, 0);
    hands.fill("door-name", "main doors").fill("door-offset", "25'");
    hands.click("tool-DOORWAY").line("3'").clickSlab(0, 8 * FOOT);
    hands.fill("door-name", "yard door").fill("door-offset", "26'");
  }
}
