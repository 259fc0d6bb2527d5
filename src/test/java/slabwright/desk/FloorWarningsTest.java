package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.TimeoutException;
import java.util.stream.Collectors;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import slabwright.desk.model.Stage;
import slabwright.shape.Vec;
import slabwright.site.Mark;

/** What a floor person would point at, in a room with two counters that stand in one another. */
class FloorWarningsTest extends RoomOnDesk {
  @Override
  List<Mark> marks() {
    return List.of(
        island("counter", 2000, 3000, 2000, 1000), island("shelf", 2900, 3000, 1000, 1000));
  }

  /** All that the cards say now. */
  private String cards() {
    return DeskUnderTest.on(
        () ->
            desk.stage().getScene().lookup(".card-column").lookupAll(".label").stream()
                .filter(DeskGestures::shows)
                .map(n -> ((Labeled) n).getText())
                .collect(Collectors.joining("\n")));
  }

  private String notice() {
    return DeskUnderTest.on(() -> ((Labeled) desk.node("notice-words")).getText());
  }

  @Test
  void what_a_floor_person_expects_is_warned_of_in_words() throws TimeoutException {
    assertThat(cards()).contains("counter and shelf stand in one another.");
    hands.press(KeyCode.P);
    hands.drag(new Vec(5000, 1000), new Vec(5600, 1000));
    assertThat(notice()).startsWith("That line goes round no floor");
    assertThat(hands.area().marks()).hasSize(2);
    hands.press(KeyCode.N).line("6 m, 1 m");
    assertThat(hands.area().marks().get(2).name()).isEqualTo("power point 1");
    hands.fill("mark-name", "socket").fill("mark-name", " ");
    assertThat(hands.area().marks().get(2).name()).isEqualTo("power point 1");
    hands.stage(Stage.PREP);
    assertThat(cards()).contains("counts as hand work");
    assertThat(DeskUnderTest.on(() -> desk.room().workroom().layers().onFloor())).isEmpty();
  }
}
