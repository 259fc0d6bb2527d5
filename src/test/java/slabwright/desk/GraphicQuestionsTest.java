package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeoutException;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.desk.model.Stage;
import slabwright.site.StencilSpec;

/** What a graphic asks before it can be cut, each with a button that answers. */
class GraphicQuestionsTest {
  @TempDir Path data;

  private DeskGestures hands;
  private DeskUnderTest desk;

  /** A white ring on blue, and beside it a square of a blue that nobody tells from the first. */
  private void open() throws TimeoutException, IOException {
    Path plan = TestSites.withArrow(data);
    Files.writeString(
        data.resolve("arrow.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 60'>"
            + "<path fill='#14505c' d='M0,0 H60 V60 H0 Z'/>"
            + "<path fill='#ffffff' d='M20,20 H40 V40 H20 Z'/>"
            + "<path fill='#15515d' d='M70,0 H100 V60 H70 Z'/></svg>");
    desk = DeskUnderTest.open(data, 1280, 800, List.of(plan.toString()));
    hands = new DeskGestures(desk);
    hands.stage(Stage.INLAY);
    desk.settleAll();
  }

  private Optional<Button> answer(String word) {
    return DeskUnderTest.on(
        () ->
            desk.stage().getScene().getRoot().lookupAll(".finding .button").stream()
                .map(Button.class::cast)
                .filter(DeskGestures::shows)
                .filter(b -> b.getText().equals(word))
                .findFirst());
  }

  private List<String> asked() {
    return DeskUnderTest.on(
        () ->
            desk.stage().getScene().getRoot().lookupAll(".finding .label").stream()
                .map(n -> ((Label) n).getText())
                .filter(t -> t != null && t.startsWith("Asked:"))
                .toList());
  }

  private StencilSpec spec() {
    return hands.area().inlays().get(0).spec();
  }

  private void press(String word) throws TimeoutException {
    Button b = answer(word).orElseThrow();
    DeskUnderTest.on(
        () -> {
          b.setId("the-answer");
          return null;
        });
    hands.click("the-answer");
    desk.settleAll();
  }

  @Test
  void white_is_left_bare_and_near_colours_are_merged_by_a_click_each()
      throws TimeoutException, IOException {
    open();
    try {
      int before = asked().size();
      assertThat(before).isEqualTo(2);
      press("Leave bare");
      assertThat(asked()).hasSize(1);
      press("Merge");
      assertThat(asked()).isEmpty();
      assertThat(answer("As drawn")).isEmpty();
      StencilSpec both = spec();
      hands.clickSlab(500, 500).press(KeyCode.SHORTCUT, KeyCode.Z);
      desk.settleAll();
      assertThat(spec()).isNotEqualTo(both);
      assertThat(asked()).hasSize(1);
    } finally {
      desk.close();
    }
  }

  @Test
  void all_questions_are_answered_at_once_as_drawn() throws TimeoutException, IOException {
    open();
    try {
      press("As drawn");
      assertThat(asked()).isEmpty();
    } finally {
      desk.close();
    }
  }
}
