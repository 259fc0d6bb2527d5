package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Pane;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.site.Site;
import slabwright.store.PlanFile;

/** A plan that another window saved while this one had it open. */
class SharedPlanTest {
  @TempDir Path data;

  private static String notice(DeskUnderTest desk) {
    return DeskUnderTest.on(() -> ((Labeled) desk.node("notice-words")).getText());
  }

  private static void choose(DeskUnderTest desk, String words) throws TimeoutException {
    DeskUnderTest.on(
        () -> {
          ((Pane) desk.node("notice-choices"))
              .getChildren().stream()
                  .map(Button.class::cast)
                  .filter(b -> b.getText().equals(words))
                  .findFirst()
                  .orElseThrow()
                  .fire();
          return null;
        });
    desk.settle();
  }

  @Test
  void a_window_looked_at_again_offers_what_another_saved_and_undo_brings_this_one_back()
      throws TimeoutException, IOException {
    Path plan = TestSites.shed(data);
    Site theirs = PlanFile.read(plan).orThrow().withNote("theirs");
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of(plan.toString()))) {
      DeskGestures hands = new DeskGestures(desk);
      hands.fill("site-name-field", "Mine");
      PlanFile.save(theirs, plan);
      DeskUnderTest.on(
          () -> {
            desk.room().recheckFiles();
            return null;
          });
      desk.settle();
      assertThat(notice(desk))
          .startsWith("shed.site.json was changed by another window or program.");
      choose(desk, "Take theirs");
      assertThat(hands.site()).isEqualTo(theirs);
      hands.press(KeyCode.SHORTCUT, KeyCode.Z);
      assertThat(hands.site().name()).isEqualTo("Mine");
    }
  }
}
