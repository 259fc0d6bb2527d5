package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.desk.model.Stage;
import slabwright.shape.Vec;

/** The Inlay stage with a graphic that wants some mending: a comb of needles. */
class InlayStageTest {
  @TempDir Path data;

  private DeskUnderTest desk;
  private DeskGestures hands;

  @BeforeEach
  void open() throws TimeoutException, IOException {
    Path plan = TestSites.withComb(data);
    desk = DeskUnderTest.open(data, 1280, 800, List.of(plan.toString()));
    hands = new DeskGestures(desk);
    hands.stage(Stage.INLAY);
  }

  @AfterEach
  void close() {
    desk.close();
  }

  /** The button of a finding, by the beginning of its name for readers. */
  private Button button(String begins) {
    return DeskUnderTest.on(
        () ->
            desk.stage().getScene().getRoot().lookupAll(".finding .button").stream()
                .map(Button.class::cast)
                .filter(b -> b.getAccessibleText().startsWith(begins))
                .findFirst()
                .orElseThrow());
  }

  private void fire(Node button) throws TimeoutException {
    DeskUnderTest.on(
        () -> {
          ((Button) button).fire();
          return null;
        });
    desk.settle();
  }

  private Vec middle() {
    return DeskUnderTest.on(() -> hands.slab().viewport().toSite(400, 300));
  }

  @Test
  void show_steps_through_the_places_of_a_group_and_says_at_which_it_is() throws TimeoutException {
    Button show = button("Show where: 4 ");
    fire(show);
    Vec first = middle();
    assertThat(where()).isEqualTo("1 of 4");
    fire(show);
    assertThat(where()).isEqualTo("2 of 4");
    assertThat(show.getAccessibleText()).startsWith("Show the next. Now at 2 of 4: 4 ");
    assertThat(middle().distanceTo(first)).isGreaterThan(100);
    fire(show);
    fire(show);
    fire(show);
    assertThat(where()).isEqualTo("1 of 4");
    assertThat(middle().distanceTo(first)).isLessThan(1);
  }

  private String where() {
    return DeskUnderTest.on(
        () -> ((Labeled) desk.stage().getScene().lookup(".step-where")).getText());
  }
}
