package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.desk.model.Stage;
import slabwright.desk.tool.ToolName;
import slabwright.shape.Vec;

/** Keys go where the hand expects them; Esc and undo cost one step. */
class FocusTest {
  @TempDir Path data;

  private static ToolName inHand(DeskUnderTest desk) {
    return DeskUnderTest.on(() -> desk.room().tools().name());
  }

  private static Stage stage(DeskUnderTest desk) {
    return DeskUnderTest.on(() -> desk.room().bench().focus().stage());
  }

  private static TextField field(DeskUnderTest desk, String id) {
    return (TextField) desk.node(id);
  }

  private static boolean slabHasTheKeys(DeskUnderTest desk) {
    return DeskUnderTest.on(() -> desk.room().workroom().slab().isFocused());
  }

  @Test
  void taped_walls_survive_esc_and_undo_takes_back_one() throws TimeoutException {
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of())) {
      DeskGestures hands = new DeskGestures(desk);
      hands.click("start-tape").line("6 m").line("l 4 m").line("l 6 m");
      assertThat(slabHasTheKeys(desk)).as("the slab has the keys after Enter").isTrue();
      hands.type("5").press(KeyCode.ESCAPE);
      assertThat(inHand(desk)).as("Esc costs the typed line only").isEqualTo(ToolName.TAPE);
      hands.press(KeyCode.ESCAPE);
      assertThat(inHand(desk)).isEqualTo(ToolName.PICK);
      hands.press(KeyCode.T).press(KeyCode.SHORTCUT, KeyCode.Z).press(KeyCode.SHORTCUT, KeyCode.Z);
      // The arrow is pressed amid the number: the wall being typed goes left.
      hands.type("4").press(KeyCode.LEFT).line(" m");
      hands.line("l 6 m").type("4 m").press(KeyCode.LEFT).press(KeyCode.ENTER);
      hands.press(KeyCode.ENTER);
      assertThat(hands.corners())
          .containsExactly(new Vec(0, 0), new Vec(6000, 0), new Vec(6000, 4000), new Vec(0, 4000));
      assertThat(stage(desk)).isEqualTo(Stage.MEASURE);
    }
  }

  @Test
  void tools_arrows_and_undo_follow_every_placing_and_a_refused_text_is_typed_over()
      throws TimeoutException {
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of())) {
      DeskGestures hands = new DeskGestures(desk);
      hands.click("start-tape").line("6 m").line("l 4 m").line("l 6 m").line("l 4 m");
      hands.press(KeyCode.ENTER).stage(Stage.MARK).press(KeyCode.N).line("1 m, 1 m");
      hands.press(KeyCode.RIGHT);
      assertThat(x(hands)).isGreaterThan(1005);
      hands.press(KeyCode.SHORTCUT, KeyCode.Z);
      assertThat(x(hands)).isCloseTo(1000, within(0.01));
      hands.press(KeyCode.K);
      assertThat(inHand(desk)).isEqualTo(ToolName.CRACK);
      hands.press(KeyCode.V).clickSlab(1000, 1000).fill("mark-x", "here");
      assertThat(DeskUnderTest.on(() -> field(desk, "mark-x").getSelectedText())).isEqualTo("here");
      DeskUnderTest.on(
          () -> {
            desk.room().workroom().slab().requestFocus();
            return null;
          });
      hands.line("2 m");
      assertThat(stage(desk)).as("a digit after a refusal").isEqualTo(Stage.MARK);
      assertThat(x(hands)).isCloseTo(2000, within(0.01));
      assertThat(slabHasTheKeys(desk)).as("the slab has the keys after a field").isTrue();
      hands.press(KeyCode.TAB);
      assertThat(DeskUnderTest.on(() -> field(desk, "mark-y").isFocused())).isTrue();
    }
  }

  private static double x(DeskGestures hands) {
    return hands.area().marks().get(0).form().spots().get(0).vec().x();
  }
}
