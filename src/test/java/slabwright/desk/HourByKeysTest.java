package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import javafx.geometry.Point2D;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import slabwright.site.FloorArea;
import slabwright.site.MarkType;
import slabwright.site.OutlineShape;

/**
 * From an empty screen to packets without a pointer. docs/measured.md has the count by steps, which
 * is of this test.
 */
class HourByKeysTest {
  /** No more than this: the aim is 300, it took 171. */
  private static final int MOST = 200;

  private static final double FOOT = 304.8;

  @TempDir Path data;

  private DeskUnderTest desk;
  private DeskGestures hands;

  @Test
  @Tag("long")
  void an_empty_screen_becomes_packets_by_the_keyboard_alone()
      throws TimeoutException, IOException {
    TestSites.arrow(data, 30);
    Files.move(data.resolve("arrow.svg"), data.resolve("graphic.svg"));
    // Of the test before: a pointer that rests over the window would move as what lies below does.
    FxToolkit.registerPrimaryStage();
    new FxRobot().robotContext().getBaseRobot().moveMouse(new Point2D(1900, 1190));
    try (DeskUnderTest opened = DeskUnderTest.open(data, 1280, 800, List.of());
        Unwanted pointer = Unwanted.pointer()) {
      desk = opened;
      hands = new DeskGestures(desk);
      measure();
      secondFloor();
      marks();
      inlay();
      finish();
      hands.press(KeyCode.DIGIT6);
      desk.settleAll();
      hands.tabTo("export-packets").press(KeyCode.SPACE);
      desk.settleAll();
      assertThat(packets()).hasSize(5);
      assertThat(hands.keys()).isLessThanOrEqualTo(MOST);
      assertThat(hands.clicks()).isZero();
      assertThat(pointer.seen()).as("what a pointer did").isEmpty();
    }
  }

  /** 40 by 26 ft without a corner of 10 by 15; the second wall is read a foot too long. */
  private void measure() throws TimeoutException {
    hands.press(KeyCode.T);
    for (String wall : List.of("40", "l 27", "l 30", "l 15", "r 10", "l 11")) {
      hands.line(wall);
    }
    hands.press(KeyCode.ENTER).tabTo("take-2").press(KeyCode.SPACE);
    double feet = OutlineShape.of(hands.area().outline(), 1).region().area() / (FOOT * FOOT);
    assertThat(feet).isCloseTo(890, within(0.5));
  }

  private void secondFloor() throws TimeoutException {
    hands.press(KeyCode.W).line("20, 0").line("40, 13").press(KeyCode.T).line("60, 0");
    for (String wall : List.of("12", "l 10", "l 12", "l 10")) {
      hands.line(wall);
    }
    hands.press(KeyCode.ENTER).press(KeyCode.W).line("60, 5");
    hands.tabTo("door-leads-to").press(KeyCode.SPACE).press(KeyCode.DOWN).press(KeyCode.DOWN);
    hands.press(KeyCode.ENTER);
    assertThat(hands.site().areas()).hasSize(2);
    assertThat(hands.area().doorways().get(0).passage().leadsTo()).isPresent();
  }

  private void marks() throws TimeoutException {
    hands.press(KeyCode.SHORTCUT, KeyCode.F6).press(KeyCode.ESCAPE).press(KeyCode.DIGIT2);
    hands.press(KeyCode.T).line("12").line("5, 4").press(KeyCode.UP).line("6");
    hands.press(KeyCode.ENTER).press(KeyCode.C).line("30, 13").line("14");
    hands.press(KeyCode.ESCAPE).press(KeyCode.DIGIT3).tabTo("add-machine").press(KeyCode.SPACE);
    FloorArea first = hands.site().areas().get(0);
    assertThat(first.marks().stream().map(m -> m.kind().type()))
        .containsExactly(MarkType.TRENCH, MarkType.COLUMN);
    assertThat(first.machines()).hasSize(1);
  }

  private void inlay() throws TimeoutException {
    hands.press(KeyCode.DIGIT4).tabTo("choose-graphic").press(KeyCode.SPACE);
    assertThat(hands.site().areas().get(0).inlays()).hasSize(1);
  }

  private void finish() throws TimeoutException {
    hands.press(KeyCode.DIGIT5);
    desk.settleAll();
    hands.tabTo("add-coat").press(KeyCode.SPACE);
    hands.tabTo("fold-slab-and-air-as-measured").press(KeyCode.SPACE);
    hands.tabTo("slab-air").line("66");
    assertThat(hands.site().areas().get(0).finish().coats()).hasSize(1);
  }

  private List<Path> packets() throws IOException {
    try (Stream<Path> all = Files.walk(data.resolve("out"))) {
      return all.filter(p -> p.toString().endsWith(".pdf")).toList();
    }
  }
}
