package slabwright.desk;

import java.util.concurrent.TimeoutException;
import javafx.scene.input.KeyCode;
import slabwright.desk.model.Stage;

/** The terrace of the tram hall sample. */
final class RedrawTerrace {
  private static final double FOOT = RedrawHall.FOOT;

  private final DeskGestures hands;

  RedrawTerrace(DeskGestures hands) {
    this.hands = hands;
  }

  void walls() throws TimeoutException {
    hands.click("add-area").line("32'").line("l 14'").line("l 32'").line("l 14'");
    hands.press(KeyCode.ENTER).fill("area-name", "Terrace");
    hands.choose("area-setting", "outdoors").fill("area-x", "12'").fill("area-y", "-18'");
    wall(28, -18, "a curb");
    wall(44, -11, "an open edge");
    hands.fill("wall-bulge", "2'");
    wall(12, -11, "a curb");
  }

  private void wall(double x, double y, String ends) throws TimeoutException {
    hands.clickSlab(x * FOOT, y * FOOT).choose("wall-kind", ends);
  }

  void doorways() throws TimeoutException {
    hands.click("tool-DOORWAY").line("9' 4\"").clickSlab(30 * FOOT, -4 * FOOT);
    hands.fill("door-name", "to the main doors").fill("door-offset", "9' 8\"");
    hands.choose("door-leads-to", "Reading hall, main doors");
    hands.click("door-way-in");
    hands.click("tool-DOORWAY").line("8'").clickSlab(26 * FOOT, -18 * FOOT);
    hands.fill("door-name", "from the street").fill("door-offset", "10'");
    hands.click("door-way-in");
  }

  void marks() throws TimeoutException {
    hands.stage(Stage.MARK);
    RedrawFloorMarks marks = new RedrawFloorMarks(hands);
    marks.box("TOP", "rectangle", "25', -5' 8\"", "9' 4\" x 1' 8\"", "step up to the doors");
    hands.fill("kind-edge", "2\"").fill("kind-treads", "2");
    marks.box("DRAIN", "round", "20', -11'", "10\"", "yard drain");
    hands.click("tool-SPALL").click("option-corners").line("12', -18'").line("13' 2\", -18'");
    hands.line("12', -16' 10\"").press(KeyCode.ENTER).fill("mark-name", "broken corner");
    hands.fill("kind-depth", "1/2\"");
  }
}
