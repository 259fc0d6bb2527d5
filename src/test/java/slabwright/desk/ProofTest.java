package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.desk.model.Stage;
import slabwright.desk.model.input.Viewport;

class ProofTest {
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

  /** The arrow's stencil as a shop would send it back: 1.2 by 1.8 m, a margin of 50 mm round it. */
  private void returned(String more) throws IOException {
    Files.writeString(
        data.resolve("returned.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' width='1300mm' height='1900mm' viewBox='0 0 1300 1900'>"
            + "<path fill='none' stroke='#000' d='M0,0 H1300 V1900 H0 Z'/>"
            + "<path fill='#888' d='M50,1850 L650,50 L1250,1850 Z'/>"
            + more
            + "</svg>");
  }

  private List<String> result() {
    return DeskUnderTest.on(
        () ->
            ((Parent) desk.node("proof-result"))
                .lookupAll(".label").stream().map(n -> ((Label) n).getText()).toList());
  }

  @Test
  void a_drawing_that_agrees_is_said_to_once_shading_is_known()
      throws TimeoutException, IOException {
    returned("");
    hands.stage(Stage.INLAY).click("choose-proof");
    assertThat(result())
        .anyMatch(s -> s.contains("ask the shop whether shading is pulled out"))
        .anyMatch(s -> s.startsWith("Cannot tell"))
        .doesNotContain("✓");
    hands.click("shading-out");
    assertThat(result())
        .contains("✓", "Cut: no fault found; the drawing agrees with the plan.")
        .noneMatch(s -> s.contains("ask the shop whether shading"));
    hands.click("shading-stays");
    assertThat(result())
        .contains("Do not cut.", "What is pulled out and what stays are exchanged.");
  }

  @Test
  void the_verdict_stands_by_the_picture_and_both_are_scrolled_into_view()
      throws TimeoutException, IOException {
    returned("");
    hands.stage(Stage.INLAY).click("choose-proof");
    desk.settleAll();
    double foot = DeskUnderTest.on(() -> desk.stage().getScene().getHeight() - 60);
    double top = DeskUnderTest.on(() -> desk.node("proof-verdict").localToScene(0, 0).getY());
    double high = DeskUnderTest.on(() -> desk.node("proof-verdict").getLayoutBounds().getHeight());
    assertThat(top).isPositive();
    assertThat(top + high).isLessThan(foot);
  }

  @Test
  void an_added_opening_is_listed_and_shown_on_the_floor() throws TimeoutException, IOException {
    returned("<path fill='#888' d='M100,100 H200 V200 H100 Z'/>");
    hands.stage(Stage.INLAY).click("choose-proof").click("shading-out");
    assertThat(result()).anyMatch(s -> s.startsWith("An opening of 100 cm² is added"));
    hands.press(KeyCode.SHORTCUT, KeyCode.U);
    assertThat(result()).anyMatch(s -> s.startsWith("An opening of 15.5 sq in is added"));
    Viewport before = hands.slab().viewport();
    DeskUnderTest.on(
        () -> {
          ((Button) desk.node("proof-result").lookup(".link")).fire();
          return null;
        });
    desk.settle();
    assertThat(hands.slab().viewport().scale()).isGreaterThan(before.scale());
  }

  @Test
  void another_width_puts_the_result_away() throws TimeoutException, IOException {
    returned("");
    hands.stage(Stage.INLAY).click("choose-proof");
    assertThat(result()).isNotEmpty();
    hands.fill("inlay-width", "1300 mm");
    assertThat(result()).isEmpty();
  }
}
