package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeoutException;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import slabwright.desk.model.Stage;
import slabwright.desk.shell.OpenQuestion;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.Spot;
import slabwright.site.TrenchLevel;
import slabwright.units.Length;

/** A room with a proud trench, of which nothing else is known. */
class OpenQuestionsTest extends RoomOnDesk {
  @Override
  List<Mark> marks() {
    Form path = new Form.Strip(List.of(Spot.mm(1000, 1000), Spot.mm(5000, 1000)), Length.mm(600));
    return List.of(Mark.of("t1", "drain", new MarkKind.Trench(TrenchLevel.PROUD, false), path));
  }

  private int line(String key) {
    List<OpenQuestion> all =
        DeskUnderTest.on(
            () -> PlanQuestions.of(desk.room().bench().desk().site(), Optional.empty()));
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).what().key().endsWith(key)) {
        return i;
      }
    }
    throw new AssertionError(key + " is not asked");
  }

  private boolean isSeen(String id) {
    return DeskUnderTest.on(
        () -> {
          Node field = desk.node(id);
          Bounds at = field.localToScene(field.getLayoutBounds());
          Node column = desk.stage().getScene().lookup(".card-column");
          return field.isFocused()
              && column.localToScene(column.getLayoutBounds()).contains(at.getMinX(), at.getMinY())
              && column.localToScene(column.getLayoutBounds()).contains(at.getMaxX(), at.getMaxY());
        });
  }

  @Test
  void each_line_of_what_is_missing_leads_to_its_field_and_goes_once_it_is_answered()
      throws TimeoutException {
    assertThat(line("no-doorway")).as("the gravest first").isLessThan(line("trench-height"));
    hands.stage(Stage.PREP).click("tally-still-open").click("open-" + line("trench-height"));
    assertThat(isSeen("trench-off")).isTrue();
    int before = missing();
    hands.line("12");
    assertThat(((MarkKind.Trench) mark("t1").kind()).off().orElseThrow().mm()).isEqualTo(12);
    assertThat(missing()).isEqualTo(before - 1);
    hands.click("open-" + line("no-air"));
    assertThat(isSeen("slab-air")).isTrue();
    hands.line("21");
    desk.settleAll();
    hands.press(KeyCode.TAB);
    assertThat(isSeen("slab-humidity")).as("Tab goes on from the field").isTrue();
    assertThat(DeskUnderTest.on(() -> desk.node("stage-" + Stage.MARK.name()).getAccessibleText()))
        .doesNotContain("proud");
  }

  private int missing() {
    return DeskUnderTest.on(
        () -> Integer.parseInt(((Labeled) desk.node("tally-still-open")).getText()));
  }
}
