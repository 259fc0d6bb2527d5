package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.desk.model.Stage;

/** The Finish stage is cut into short steps. */
class FinishStepsTest {
  @TempDir Path data;

  private DeskUnderTest desk;
  private DeskGestures hands;

  @BeforeEach
  void open() throws TimeoutException, IOException {
    desk = DeskUnderTest.open(data, 1280, 800, List.of(TestSites.shed(data).toString()));
    hands = new DeskGestures(desk);
    hands.stage(Stage.FINISH);
    desk.settleAll();
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private List<String> opened() {
    return DeskUnderTest.on(
        () ->
            desk.stage().getScene().getRoot().lookupAll(".card-title").stream()
                .map(Labeled.class::cast)
                .filter(DeskGestures::shows)
                .filter(h -> h.getAccessibleText().endsWith(", open"))
                .map(Node::getId)
                .toList());
  }

  private String asks(String card) {
    return DeskUnderTest.on(
        () -> {
          Label l = (Label) desk.node("asks-" + card);
          return l.isVisible() ? l.getText() : "";
        });
  }

  private double top(String id) {
    return DeskUnderTest.on(() -> desk.node(id).localToScene(0, 0).getY());
  }

  @Test
  void one_step_is_open_at_a_time_and_all_headings_fit_the_window() throws TimeoutException {
    assertThat(opened()).containsExactly("fold-finish-system");
    hands.click("fold-coats");
    assertThat(opened()).containsExactly("fold-coats");
    hands.click("fold-coats");
    assertThat(opened()).isEmpty();
    assertThat(top("fold-after-the-job")).isLessThan(720);
  }

  @Test
  void a_step_says_what_is_still_asked_on_it_until_it_is_answered() throws TimeoutException {
    assertThat(asks("slab-and-air-as-measured")).startsWith("! ").contains(" more)");
    assertThat(asks("finish-system"))
        .isEqualTo("! Nothing goes on the floor yet: choose coats. (and 1 more)");
    hands.choose("finish-exposure", "fine aggregate");
    assertThat(asks("finish-system")).isEqualTo("! Nothing goes on the floor yet: choose coats.");
    hands.click("add-coat");
    assertThat(asks("finish-system")).isEmpty();
  }

  @Test
  void what_is_typed_into_stays_where_it_is_while_figures_come_in() throws TimeoutException {
    hands.fill("slab-mohs", "5").click("slab-age");
    double before = top("slab-age");
    hands.type("40");
    desk.settleAll();
    assertThat(top("slab-age")).isCloseTo(before, within(1.0));
    hands.press(KeyCode.ENTER);
    desk.settleAll();
    assertThat(top("slab-age")).isCloseTo(before, within(1.0));
  }

  @Test
  void a_line_of_what_is_open_leads_into_a_folded_step() throws TimeoutException {
    hands.click("tally-still-open");
    DeskUnderTest.on(
        () -> {
          desk.room().workroom().leadTo(Stage.FINISH, "slab-mohs");
          return null;
        });
    desk.settle();
    assertThat(opened()).containsExactly("fold-slab-and-air-as-measured");
    assertThat(DeskUnderTest.on(() -> desk.node("slab-mohs").isFocused())).isTrue();
  }
}
