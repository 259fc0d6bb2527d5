package slabwright.desk;

import java.util.concurrent.TimeoutException;
import javafx.scene.input.KeyCode;
import slabwright.shape.Vec;

/** The reading hall's trench, residue, patches and what stands on it, in the order laid. */
final class RedrawFloorMarks {
  private static final double FOOT = RedrawHall.FOOT;

  private final DeskGestures hands;

  RedrawFloorMarks(DeskGestures hands) {
    this.hands = hands;
  }

  void trench() throws TimeoutException {
    hands.click("tool-TRENCH").line("2' 10\"").line("19' 6\", 35' 7\"");
    hands.press(KeyCode.DOWN).line("20' 7\"").press(KeyCode.RIGHT).line("15' 6\"");
    hands.press(KeyCode.ENTER).fill("mark-name", "drain trench");
    hands.fill("trench-off", "1/8\"");
  }

  void residue() throws TimeoutException {
    box("RESIDUE", "rectangle", "2' 6\", 4' 5\"", "10' 8\" x 8' 2\"", "old carpet glue");
    hands.fill("kind-of-what", "carpet adhesive");
  }

  void patches() throws TimeoutException {
    hands.click("tool-PATCH").click("option-corners");
    hands.line("3' 2\", 24' 6\"").line("11' 8\", 24' 4\"").line("3' 10\", 31'");
    hands.press(KeyCode.ENTER).fill("mark-name", "levelled spot");
    hands.fill("point-bulge-1", "2' 6\"").fill("point-bulge-2", "1' 2\"");
    box("PATCH", "rectangle", "41', 4' 6\"", "4' x 3'", "pit cover");
  }

  void counter() throws TimeoutException {
    box("ISLAND", "round-ended", "23' 2\", 23' 1\"", "15' 8\" x 6' 2\"", "lending counter");
  }

  /** A row along the wall, each then set to the inch. */
  void booths() throws TimeoutException {
    hands.click("tool-BOOTH").line("3' 3\" x 4' 5\" gap 10\" off 8 1/2\"");
    hands.drag(new Vec(47.5 * FOOT, 34.3 * FOOT), new Vec(47.5 * FOOT, 21.9 * FOOT));
    String[] up = {"32' 8\"", "28' 7\"", "24' 6\""};
    double[] near = {32.67, 28.58, 24.5};
    for (int i = 0; i < 3; i++) {
      hands.click("tool-PICK").clickSlab(44.6 * FOOT, near[i] * FOOT);
      hands.fill("mark-name", "reading booth " + (i + 1)).fill("mark-y", up[i]);
    }
  }

  void columns() throws TimeoutException {
    box("COLUMN", "round", "14', 17' 9\"", "14\"", "column");
    box("COLUMN", "round", "40', 17' 9\"", "14\"", "column");
  }

  void box(String tool, String way, String place, String size, String name)
      throws TimeoutException {
    hands.click("tool-" + tool).click("option-" + way).line(place).line(size);
    hands.fill("mark-name", name);
  }
}
