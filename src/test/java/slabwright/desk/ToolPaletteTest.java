package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import slabwright.desk.model.Stage;
import slabwright.desk.tool.ToolName;

/** The tools of the Mark stage at the smaller of the usual window sizes. */
class ToolPaletteTest extends RoomOnDesk {
  private List<Node> rows() {
    return DeskUnderTest.on(
        () ->
            ((Parent) ((ScrollPane) desk.node("tools")).getContent())
                .getChildrenUnmodifiable().stream().toList());
  }

  private static Bounds box(Node n) {
    return DeskUnderTest.on(() -> n.localToScene(n.getLayoutBounds()));
  }

  private static String word(Node row) {
    return row instanceof Label caption ? "– " + caption.getText() : row.getAccessibleText();
  }

  @Test
  void marking_tools_stand_under_captions_of_where_their_marks_lie() {
    assertThat(rows().stream().map(ToolPaletteTest::word))
        .startsWith("Pick", "Distance", "– In the floor", "Trench", "Patch", "Residue", "Spall")
        .containsSubsequence("– Lines", "Joint", "Crack", "Level change", "– On the floor")
        .containsSubsequence("– On the floor", "Island", "Booths", "Column", "Top or step")
        .endsWith("– Places", "Power point", "Detector", "Ignition", "Air outlet");
  }

  @Test
  void no_marking_tool_is_cut_off_or_lies_over_another_or_over_the_entry_line()
      throws TimeoutException {
    hands.press(KeyCode.T);
    List<Node> rows = rows();
    for (int i = 1; i < rows.size(); i++) {
      assertThat(box(rows.get(i)).getMinY()).isGreaterThanOrEqualTo(box(rows.get(i - 1)).getMaxY());
    }
    double foot = box(desk.node("tools")).getMaxY();
    assertThat(foot).isLessThan(box(desk.stage().getScene().lookup(".entry-bar")).getMinY());
    assertThat(rows.stream().flatMap(ToolPaletteTest::texts).filter(t -> t.endsWith("…")))
        .isEmpty();
  }

  private static Stream<String> texts(Node row) {
    return DeskUnderTest.on(
        () -> row.lookupAll(".text").stream().map(t -> ((Text) t).getText()).toList().stream());
  }

  @Test
  void every_marking_tool_has_a_key_of_its_own() throws TimeoutException {
    List<ToolName> marking = ToolName.of(Stage.MARK);
    assertThat(marking.stream().map(ToolName::key)).doesNotHaveDuplicates();
    hands.press(KeyCode.Q);
    assertThat(DeskUnderTest.on(() -> desk.room().tools().name())).isEqualTo(ToolName.IGNITION);
  }
}
