package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Labeled;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.desk.model.Stage;

class LookTest {
  @TempDir Path data;

  private DeskUnderTest desk;
  private DeskGestures hands;

  @BeforeEach
  void open() throws TimeoutException, IOException {
    Path plan = TestSites.withArrow(data);
    desk = DeskUnderTest.open(data, 1280, 800, List.of(plan.toString()));
    hands = new DeskGestures(desk);
  }

  @AfterEach
  void close() {
    desk.close();
  }

  /** How bright the slab and the cards are on the whole, 0 to 1. */
  private double brightness() {
    return DeskUnderTest.on(
        () -> {
          WritableImage shot = desk.stage().getScene().snapshot(null);
          double sum = 0;
          int n = 0;
          for (int x = 200; x < 1270; x += 40) {
            for (int y = 100; y < 700; y += 40) {
              Color c = shot.getPixelReader().getColor(x, y);
              sum += c.getBrightness();
              n++;
            }
          }
          return sum / n;
        });
  }

  @Test
  void the_look_turns_dark_and_light_again_at_once() throws TimeoutException {
    assertThat(brightness()).isGreaterThan(0.8);
    hands.click("look");
    assertThat(brightness()).isLessThan(0.35);
    hands.press(KeyCode.SHORTCUT, KeyCode.L);
    assertThat(brightness()).isGreaterThan(0.8);
  }

  private static Color fill(Region mark) {
    return (Color) mark.getBackground().getFills().get(0).getFill();
  }

  @Test
  void a_box_that_is_not_ticked_shows_no_tick_in_either_look() throws TimeoutException {
    CheckBox box = new CheckBox("told");
    DeskUnderTest.on(() -> ((Pane) desk.stage().getScene().getRoot()).getChildren().add(box));
    for (String look : List.of("light", "dark")) {
      desk.laidOut();
      Region mark = DeskUnderTest.on(() -> (Region) box.lookup(".mark"));
      assertThat(DeskUnderTest.on(() -> fill(mark).getOpacity())).as(look).isZero();
      select(box, true);
      assertThat(DeskUnderTest.on(() -> fill(mark).getOpacity())).as(look).isEqualTo(1);
      select(box, false);
      hands.click("look");
    }
  }

  private void select(CheckBox box, boolean on) throws TimeoutException {
    DeskUnderTest.on(
        () -> {
          box.setSelected(on);
          return null;
        });
    desk.laidOut();
  }

  @Test
  void the_words_of_a_choice_end_before_its_arrow() throws TimeoutException {
    ChoiceBox<String> choice = new ChoiceBox<>();
    DeskUnderTest.on(
        () -> {
          choice.getItems().setAll("% RH in the slab, by a probe in a drilled hole");
          choice.getSelectionModel().select(0);
          choice.setMaxWidth(180);
          HBox row = new HBox(choice);
          row.setMaxWidth(180);
          return ((Pane) desk.stage().getScene().getRoot()).getChildren().add(row);
        });
    desk.laidOut();
    double words =
        DeskUnderTest.on(
            () -> {
              Node text = choice.lookup(".label").lookup(".text");
              return text.localToScene(text.getBoundsInLocal()).getMaxX();
            });
    double arrow =
        DeskUnderTest.on(
            () -> {
              Node open = choice.lookup(".arrow");
              return open.localToScene(open.getBoundsInLocal()).getMinX();
            });
    assertThat(words).isLessThanOrEqualTo(arrow);
  }

  @Test
  void the_look_is_kept_for_the_next_time() throws TimeoutException {
    hands.click("look");
    desk.close();
    desk = DeskUnderTest.open(data, 1280, 800, List.of());
    assertThat(brightness()).isLessThan(0.35);
  }

  @Test
  void fields_tally_and_sheets_follow_the_units() throws TimeoutException {
    hands.stage(Stage.INLAY);
    assertThat(field("inlay-width")).isEqualTo("1.200 m");
    hands.press(KeyCode.SHORTCUT, KeyCode.U);
    assertThat(field("inlay-width")).isEqualTo("3′ 11 1/4″");
    assertThat(DeskUnderTest.on(() -> ((Labeled) desk.node("tally-net-floor")).getText()))
        .isEqualTo("516.7 sq ft");
    hands.stage(Stage.SHEETS);
    desk.settleAll();
    assertThat(DeskUnderTest.on(() -> desk.room().parts().pages().paper().word()))
        .isEqualTo("Tabloid");
  }

  private String field(String id) {
    return DeskUnderTest.on(() -> Fields.text(desk.node(id)));
  }
}
