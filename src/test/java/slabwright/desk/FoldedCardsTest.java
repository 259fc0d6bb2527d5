package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.desk.model.Stage;

class FoldedCardsTest {
  private static final String PANELS = "fold-panels-for-the-sign-shop";

  @TempDir Path data;

  private DeskUnderTest desk;
  private DeskGestures hands;

  @BeforeEach
  void open() throws TimeoutException, IOException {
    start(TestSites.withArrow(data));
  }

  private void start(Path plan) throws TimeoutException {
    desk = DeskUnderTest.open(data, 1280, 800, List.of(plan.toString()));
    hands = new DeskGestures(desk);
    hands.stage(Stage.INLAY);
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private String heading(String id) {
    return DeskUnderTest.on(() -> desk.node(id).getAccessibleText());
  }

  private boolean shows(String id) {
    return DeskUnderTest.on(
        () -> {
          Node up = desk.node(id);
          while (up != null && up.isVisible()) {
            up = up.getParent();
          }
          return up == null;
        });
  }

  private String panels() {
    return DeskUnderTest.on(
        () -> ((Labeled) desk.stage().getScene().lookup(".big-figure")).getText());
  }

  @Test
  void a_click_on_the_heading_folds_a_card_and_another_unfolds_it() throws TimeoutException {
    assertThat(heading("fold-cut-files")).isEqualTo("Cut files, open");
    hands.click("fold-cut-files");
    assertThat(heading("fold-cut-files")).isEqualTo("Cut files, folded");
    assertThat(shows("export-cut")).isFalse();
    assertThat(shows("fold-cut-files")).isTrue();
    hands.click("fold-cut-files");
    assertThat(heading("fold-cut-files")).isEqualTo("Cut files, open");
    assertThat(shows("export-cut")).isTrue();
  }

  @Test
  void enter_and_space_fold_the_card_whose_heading_has_the_keys() throws TimeoutException {
    hands.tabTo("fold-seams").press(KeyCode.ENTER);
    assertThat(heading("fold-seams")).isEqualTo("Seams, folded");
    hands.press(KeyCode.SPACE);
    assertThat(heading("fold-seams")).isEqualTo("Seams, open");
    hands.press(KeyCode.SPACE);
    assertThat(heading("fold-seams")).isEqualTo("Seams, folded");
  }

  @Test
  void folded_cards_stay_folded_when_the_desk_is_opened_again() throws TimeoutException {
    hands.click("fold-vinyl-and-masking");
    desk.close();
    start(data.resolve("shed.site.json"));
    assertThat(heading("fold-vinyl-and-masking")).isEqualTo("Vinyl and masking, folded");
    assertThat(heading("fold-cut-files")).isEqualTo("Cut files, open");
  }

  @Test
  void a_folded_card_is_brought_up_to_date_only_when_it_is_unfolded() throws TimeoutException {
    assertThat(panels()).startsWith("2 panels");
    hands.click(PANELS).fill("inlay-width", "700 mm");
    assertThat(panels()).startsWith("2 panels");
    hands.click(PANELS);
    assertThat(panels()).startsWith("1 panel ");
  }

  @Test
  void the_heading_of_a_folded_card_still_follows_what_is_picked() throws TimeoutException {
    hands.fill("inlay-name", "Pointer").click("fold-size-and-place");
    assertThat(heading("fold-size-and-place")).isEqualTo("Pointer, folded");
    hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(heading("fold-size-and-place")).isEqualTo("Arrow, folded");
  }

  @Test
  void the_way_to_the_cut_files_is_short_once_the_cards_before_are_folded()
      throws TimeoutException {
    for (String card :
        List.of("size-and-place", "panels-for-the-sign-shop", "before-it-is-cut", "seams")) {
      hands.click("fold-" + card);
    }
    hands.click("fold-colours-and-ties");
    double foot =
        DeskUnderTest.on(
            () -> {
              Node save = desk.node("export-cut");
              return save.localToScene(save.getLayoutBounds()).getMaxY();
            });
    assertThat(foot).isLessThan(724);
  }
}
