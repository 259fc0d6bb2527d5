package slabwright.desk;

import java.util.concurrent.TimeoutException;
import javafx.scene.input.KeyCode;

/** The reading hall's joints, boxes and single places. */
final class RedrawSmallMarks {
  private final DeskGestures hands;

  RedrawSmallMarks(DeskGestures hands) {
    this.hands = hands;
  }

  void lines() throws TimeoutException {
    hands.click("tool-JOINT").line("0, 19'").press(KeyCode.RIGHT).line("18' 1\"");
    filler("day joint", "3/8\"", "1\"");
    hands.click("tool-CRACK").line("14' 5\", 17' 5\"").line("16' 2\", 15' 8\"");
    hands.line("16' 9\", 13' 2\"");
    filler("crack at the column", "1/8\"", "1/2\"");
  }

  private void filler(String name, String width, String depth) throws TimeoutException {
    hands.press(KeyCode.ENTER).fill("mark-name", name);
    hands.fill("kind-width", width).fill("kind-depth", depth);
  }

  void boxAndGlass() throws TimeoutException {
    hands.click("tool-DRAIN").click("option-rectangle").line("24' 6\", 20'").line("12\" x 12\"");
    hands.fill("mark-name", "floor box");
    hands.click("tool-TRIM").line("34' 4\", 0").press(KeyCode.RIGHT).line("4'");
    hands.press(KeyCode.ENTER).fill("mark-name", "glass beside the doors");
    hands.fill("kind-masked-up-to", "7' 6\"");
  }

  void places() throws TimeoutException {
    place("POWER", "1\", 12'", "wall socket");
    hands.fill("kind-gives", "32 A");
    place("DETECTOR", "12', 22'", "smoke detector");
    place("DETECTOR", "36', 10'", "smoke detector");
    place("IGNITION", "46' 6\", 21'", "water heater");
    hands.fill("kind-what", "pilot light of the water heater");
    place("AIR", "10', 35' 6\"", "window for the fan");
  }

  private void place(String tool, String where, String name) throws TimeoutException {
    hands.click("tool-" + tool).line(where).fill("mark-name", name);
  }
}
