package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.testfx.util.WaitForAsyncUtils;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.Stage;
import slabwright.site.Doorway;
import slabwright.site.Form;
import slabwright.site.Mark;

/** A room of 8 m by 6 m, worked on with a thumb. */
class ThumbsTest extends RoomOnDesk {
  @Override
  List<Mark> marks() {
    return List.of(island("counter", 4000, 3000, 2000, 1000));
  }

  private void pad(String... signs) throws TimeoutException {
    for (String sign : signs) {
      hands.click("pad-" + sign);
    }
  }

  @Test
  void a_column_is_typed_on_the_pad_and_a_long_press_opens_the_menu_of_what_lies_there()
      throws TimeoutException {
    hands.click("number-pad-switch").press(KeyCode.C);
    hands.click("option-round");
    pad("1", "m", ",", "1", "m", "Enter", "3", "5", "0", "Enter");
    Form.Circle column = (Form.Circle) hands.area().marks().get(1).form();
    assertThat(column.radius().mm()).isEqualTo(175);
    hands.press(KeyCode.V).press(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.K);
    hands.hold(4000, 3000);
    WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, Popups::hasMenu);
    hands.letGo();
    assertThat(picked()).containsExactly(new PlanItem.OfMark("counter"));
    hands.press(KeyCode.ESCAPE);
    assertThat(hands.area().mark("counter")).isPresent();
  }

  @ParameterizedTest
  @CsvSource({"1280, 800, false", "1280, 800, true", "960, 640, false", "960, 640, true"})
  void the_number_pad_covers_no_wall(double wide, double high, boolean folded)
      throws TimeoutException {
    DeskUnderTest.on(
        () -> {
          desk.stage().setWidth(wide);
          desk.stage().setHeight(high);
          return null;
        });
    desk.settle();
    hands.stage(Stage.MEASURE).click("number-pad-switch");
    if (folded) {
      hands.click("panel-switch");
    }
    hands.click("tool-DOORWAY").clickSlab(8000, 1500).clickSlab(7000, 0).clickSlab(1000, 0);
    assertThat(hands.area().doorways().stream().map(Doorway::piece)).containsExactly(1, 0, 0);
  }

  @Test
  void the_whole_floor_is_shown_clear_of_the_line_at_the_foot() throws TimeoutException {
    DeskUnderTest.on(
        () -> {
          desk.stage().setWidth(960);
          desk.stage().setHeight(640);
          desk.room().commands().run("roomy");
          return null;
        });
    desk.settle();
    hands.press(KeyCode.C).press(KeyCode.F);
    double foot = hands.screen(0, 0).getY();
    double line =
        DeskUnderTest.on(
            () -> {
              Node entry = desk.room().workroom().entry();
              return entry.localToScreen(entry.getLayoutBounds()).getMinY();
            });
    assertThat(foot).isLessThan(line);
  }

  @Test
  void in_the_roomy_mode_no_target_is_smaller_than_44_pixels() throws TimeoutException {
    DeskUnderTest.on(
        () -> {
          desk.room().commands().run("roomy");
          desk.room().commands().run("number-pad");
          return null;
        });
    hands.clickSlab(4000, 3000);
    List<String> small =
        DeskUnderTest.on(
            () -> {
              desk.stage().getScene().getRoot().applyCss();
              desk.stage().getScene().getRoot().layout();
              Set<Node> all = desk.stage().getScene().getRoot().lookupAll("*");
              return all.stream()
                  .filter(
                      n ->
                          n instanceof ButtonBase
                              || n instanceof TextField
                              || n instanceof ChoiceBox)
                  .filter(DeskGestures::shows)
                  .filter(n -> n.getLayoutBounds().getHeight() < 43.9)
                  .map(Node::toString)
                  .toList();
            });
    assertThat(small).isEmpty();
  }
}
