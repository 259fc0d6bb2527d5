package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.desk.model.Stage;

/** A room of feet and inches typed without a single unit. */
class BareNumbersTest {
  @TempDir Path data;

  private static String said(DeskUnderTest desk, String id) {
    return DeskUnderTest.on(() -> ((Labeled) desk.node(id)).getText());
  }

  @Test
  void lengths_and_temperatures_need_no_units_and_are_shown_as_understood()
      throws TimeoutException {
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of())) {
      DeskGestures hands = new DeskGestures(desk);
      hands.click("start-tape").type("16 6 1/2");
      assertThat(said(desk, "entry-meaning")).isEqualTo("= 16′ 6 1/2″");
      hands.press(KeyCode.ENTER).line("l 5 1/2");
      assertThat(said(desk, "entry-wrong")).contains("feet or inches");
      hands.line("l 1600");
      assertThat(said(desk, "entry-wrong")).contains("1600′ 0″").contains("Enter again");
      hands.line("l 12").line("l 16 6 1/2").line("l 12").press(KeyCode.ENTER);
      assertThat(hands.corners().get(2).x()).isCloseTo(5042, within(1.0));
      hands.clickSlab(0, 1800).press(KeyCode.W).line("36").clickSlab(2500, 0);
      assertThat(hands.area().doorways().get(0).width().mm()).isCloseTo(914.4, within(0.01));
      hands.stage(Stage.FINISH).fill("slab-air", "72");
      assertThat(hands.area().slab().airC().getAsDouble()).isCloseTo(200.0 / 9, within(0.01));
      hands.fill("slab-surface", "20 C");
      assertThat(hands.area().slab().surfaceC().getAsDouble()).isCloseTo(20, within(0.01));
      assertThat(said(desk, "slab-air-meaning")).isEqualTo("°F");
    }
  }
}
