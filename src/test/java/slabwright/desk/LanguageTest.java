package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.desk.model.Stage;

/** The desk in Spanish and back, with a plan open and half edited. */
class LanguageTest {
  @TempDir Path data;

  private static String said(DeskUnderTest desk, String id) {
    return DeskUnderTest.on(
        () -> {
          desk.stage().getScene().getRoot().applyCss();
          return ((Labeled) desk.node(id)).getText();
        });
  }

  private static void switchLanguage(DeskUnderTest desk) throws TimeoutException {
    DeskUnderTest.on(
        () -> {
          desk.room().commands().run("language");
          return null;
        });
    desk.settle();
  }

  @Test
  void the_desk_speaks_the_other_language_at_once_and_keeps_plan_stage_and_undo()
      throws TimeoutException, IOException {
    Path plan = TestSites.shed(data);
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of(plan.toString()))) {
      DeskGestures hands = new DeskGestures(desk);
      hands.fill("site-name-field", "Another shed").stage(Stage.MEASURE);
      assertThat(said(desk, "fold-site")).isEqualTo("Site");
      switchLanguage(desk);
      assertThat(said(desk, "fold-site")).isEqualTo("Obra");
      assertThat(hands.site().name()).isEqualTo("Another shed");
      hands.press(KeyCode.SHORTCUT, KeyCode.Z);
      assertThat(hands.site().name()).isEqualTo("Tram shed");
      hands.fill("area-name", "Nave").stage(Stage.SHEETS);
      switchLanguage(desk);
      assertThat(DeskUnderTest.on(() -> desk.room().bench().focus().stage()))
          .isEqualTo(Stage.SHEETS);
      assertThat(hands.area().name()).isEqualTo("Nave");
    }
  }

  @Test
  void the_chosen_language_is_remembered_and_stands_on_the_first_screen() throws TimeoutException {
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of())) {
      assertThat(said(desk, "start-language")).isEqualTo("En español");
      new DeskGestures(desk).click("start-language");
      assertThat(said(desk, "start-language")).isEqualTo("In English");
    }
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of())) {
      assertThat(said(desk, "start-language")).isEqualTo("In English");
    }
  }
}
