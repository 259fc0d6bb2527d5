package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.desk.model.Stage;
import slabwright.site.FloorArea;
import slabwright.site.MarkType;
import slabwright.site.OutlineShape;

/**
 * From an empty screen to packets without a keyboard: what is typed is typed on the number pad, and
 * names stay as given. docs/measured.md has the count by steps, which is of this test.
 */
class HourByPointerTest {
  /** No more than this: the aim is 300, it took 74. */
  private static final int MOST = 100;

  private static final double FOOT = 304.8;

  @TempDir Path data;

  private DeskUnderTest desk;
  private DeskGestures hands;

  @Test
  @Tag("long")
  void an_empty_screen_becomes_packets_by_mouse_and_number_pad_alone()
      throws TimeoutException, IOException {
    TestSites.arrow(data, 30);
    Files.move(data.resolve("arrow.svg"), data.resolve("graphic.svg"));
    try (DeskUnderTest opened = DeskUnderTest.open(data, 1280, 800, List.of());
        Unwanted keyboard = Unwanted.keyboard()) {
      desk = opened;
      hands = new DeskGestures(desk);
      measure();
      secondFloor();
      marks();
      inlay();
      finish();
      hands.stage(Stage.SHEETS);
      desk.settleAll();
      hands.click("export-packets");
      desk.settleAll();
      assertThat(packets()).hasSize(5);
      assertThat(hands.clicks()).isLessThanOrEqualTo(MOST);
      assertThat(hands.keys()).isZero();
      assertThat(keyboard.seen()).as("what a keyboard did").isEmpty();
    }
  }

  /** 40 by 26 ft without a corner of 10 by 15; the second wall is read a foot too long. */
  private void measure() throws TimeoutException {
    hands.click("start-tape").click("number-pad-switch");
    for (String wall : List.of("40", "27\u2190", "30", "15", "10\u2192", "11\u2190")) {
      hands.pad(wall);
    }
    hands.pad("").click("take-2");
    double feet = OutlineShape.of(hands.area().outline(), 1).region().area() / (FOOT * FOOT);
    assertThat(feet).isCloseTo(890, within(0.5));
  }

  private void secondFloor() throws TimeoutException {
    hands.click("tool-DOORWAY").clickSlab(20 * FOOT, 0).clickSlab(40 * FOOT, 13 * FOOT);
    hands.click("add-area");
    for (String wall : List.of("12", "10\u2190", "12", "10")) {
      hands.pad(wall);
    }
    hands.pad("");
    FloorArea store = hands.area();
    double west = store.outline().stream().mapToDouble(p -> p.from().x().mm()).min().orElseThrow();
    double foot = store.outline().stream().mapToDouble(p -> p.from().y().mm()).min().orElseThrow();
    hands.click("tool-DOORWAY").clickSlab(west, foot + 5 * FOOT);
    hands.choose("door-leads-to", "Floor 1, doorway 2");
    assertThat(hands.site().areas()).hasSize(2);
    assertThat(hands.area().doorways().get(0).passage().leadsTo()).isPresent();
  }

  private void marks() throws TimeoutException {
    hands.click("area-" + hands.site().areas().get(0).id()).stage(Stage.MARK);
    hands.click("tool-TRENCH").pad("12").clickSlab(5 * FOOT, 4 * FOOT);
    hands.clickSlab(5 * FOOT, 10 * FOOT).pad("");
    hands.click("tool-COLUMN").clickSlab(30 * FOOT, 13 * FOOT).pad("14");
    hands.stage(Stage.PREP).click("add-machine");
    FloorArea first = hands.site().areas().get(0);
    assertThat(first.marks().stream().map(m -> m.kind().type()))
        .containsExactly(MarkType.TRENCH, MarkType.COLUMN);
    assertThat(first.machines()).hasSize(1);
  }

  private void inlay() throws TimeoutException {
    hands.stage(Stage.INLAY).click("choose-graphic");
    assertThat(hands.site().areas().get(0).inlays()).hasSize(1);
  }

  private void finish() throws TimeoutException {
    hands.stage(Stage.FINISH).click("add-coat").click("slab-air").pad("66");
    assertThat(hands.site().areas().get(0).finish().coats()).hasSize(1);
    assertThat(hands.site().areas().get(0).slab().airC()).isPresent();
  }

  private List<Path> packets() throws IOException {
    try (Stream<Path> all = Files.walk(data.resolve("out"))) {
      return all.filter(p -> p.toString().endsWith(".pdf")).toList();
    }
  }
}
