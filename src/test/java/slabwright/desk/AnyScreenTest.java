package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeoutException;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ScrollPane;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.desk.model.DeskSettings;
import slabwright.desk.model.Stage;

class AnyScreenTest {
  @TempDir Path data;

  private static boolean scrolls(Node node) {
    return node != null && (node instanceof ScrollPane || scrolls(node.getParent()));
  }

  /** Buttons that lie outside the window and can't be scrolled to, and words that are cut. */
  private static List<String> lost(DeskUnderTest desk) {
    return DeskUnderTest.on(
        () -> {
          Scene scene = desk.stage().getScene();
          scene.getRoot().applyCss();
          scene.getRoot().layout();
          List<String> out =
              scene.getRoot().lookupAll("*").stream()
                  .filter(n -> n instanceof ButtonBase && DeskGestures.shows(n) && !scrolls(n))
                  .filter(n -> isOutside(n.localToScene(n.getLayoutBounds()), scene))
                  .map(Node::toString)
                  .toList();
          List<String> cut =
              scene.getRoot().lookupAll(".tally-item .text, .tool .text, .entry-bar .text").stream()
                  .filter(DeskGestures::shows)
                  .map(t -> ((Text) t).getText())
                  .filter(t -> t.endsWith("…"))
                  .toList();
          return java.util.stream.Stream.concat(out.stream(), cut.stream()).toList();
        });
  }

  private static boolean isOutside(Bounds at, Scene scene) {
    return at.getMinX() < -0.5
        || at.getMinY() < -0.5
        || at.getMaxX() > scene.getWidth() + 0.5
        || at.getMaxY() > scene.getHeight() + 0.5;
  }

  @Test
  void a_window_of_960_by_640_holds_all_and_a_smaller_one_scrolls() throws TimeoutException {
    try (DeskUnderTest desk = DeskUnderTest.open(data, 960, 640, List.of())) {
      DeskGestures hands = new DeskGestures(desk);
      hands.click("start-tape").line("26").line("l 20").line("l 26").line("l 20").line("");
      for (Stage stage : Stage.values()) {
        hands.stage(stage);
        assertThat(lost(desk)).as(stage + " at 960 by 640").isEmpty();
      }
      hands.stage(Stage.MARK);
      var seen = DeskUnderTest.on(() -> hands.slab().viewport());
      double wide = DeskUnderTest.on(() -> hands.slab().getWidth());
      assertThat(DeskUnderTest.on(() -> DeskGestures.shows(desk.node("fold-mark-what-is-there"))))
          .isTrue();
      DeskUnderTest.on(
          () -> {
            desk.room().commands().run("closer");
            return null;
          });
      var zoomed = DeskUnderTest.on(() -> hands.slab().viewport());
      assertThat(zoomed).isNotEqualTo(seen);
      hands.click("panel-switch");
      assertThat(DeskUnderTest.on(() -> desk.node("fold-mark-what-is-there"))).isNull();
      assertThat(DeskUnderTest.on(() -> hands.slab().getWidth()))
          .as("the panel lies over the slab, which neither grows nor moves")
          .isEqualTo(wide);
      assertThat(DeskUnderTest.on(() -> hands.slab().viewport())).isEqualTo(zoomed);
      hands.click("panel-switch");
      DeskUnderTest.on(
          () -> {
            desk.stage().setWidth(640);
            desk.stage().setHeight(480);
            return null;
          });
      desk.settle();
      assertThat(DeskUnderTest.on(() -> scrolls(desk.node("slab")))).isTrue();
      assertThat(lost(desk)).isEmpty();
    }
  }

  @Test
  void with_the_number_pad_and_room_for_thumbs_it_holds_all_too() throws Exception {
    Path plan = TestSites.withArrow(data);
    try (DeskUnderTest desk = DeskUnderTest.open(data, 960, 640, List.of(plan.toString()))) {
      DeskGestures hands = new DeskGestures(desk);
      DeskUnderTest.on(
          () -> {
            desk.room().commands().run("roomy");
            desk.room().commands().run("number-pad");
            return null;
          });
      desk.settle();
      for (Stage stage : Stage.values()) {
        hands.stage(stage);
        assertThat(lost(desk)).as(stage + " with the panel").isEmpty();
      }
      hands.click("panel-switch");
      for (Stage stage : Stage.values()) {
        hands.stage(stage);
        assertThat(lost(desk)).as(stage + " without the panel").isEmpty();
      }
    }
  }

  @Test
  void size_place_and_the_folder_last_chosen_in_are_remembered() throws TimeoutException {
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1000, 700, List.of())) {
      DeskUnderTest.on(
          () -> {
            desk.stage().setX(120);
            desk.stage().setY(60);
            desk.stage().getOnCloseRequest().handle(null);
            return null;
          });
    }
    try (DeskSettings kept = new DeskSettings(new UserDataFolder(data).settings())) {
      assertThat(kept.number("x", 0)).isEqualTo(120);
      assertThat(kept.number("width", 0)).isEqualTo(1000);
      FolderMemory asks = new FolderMemory(new FixedChooser(data), kept);
      assertThat(asks.graphic()).isPresent();
      assertThat(kept.folder()).isEqualTo(Optional.of(data.toAbsolutePath()));
    }
  }

  @Test
  void a_plan_opened_by_a_double_click_fills_the_slab() throws Exception {
    Path plan = TestSites.withArrow(data);
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1440, 900, List.of(plan.toString()))) {
      DeskGestures hands = new DeskGestures(desk);
      hands.stage(Stage.INLAY);
      desk.settleAll();
      var seen = DeskUnderTest.on(() -> hands.slab().viewport());
      DeskUnderTest.on(
          () -> {
            hands.slab().fit();
            return null;
          });
      assertThat(seen).isEqualTo(DeskUnderTest.on(() -> hands.slab().viewport()));
    }
  }
}
