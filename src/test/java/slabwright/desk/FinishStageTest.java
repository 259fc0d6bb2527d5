package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.desk.model.Stage;
import slabwright.shape.Vec;

/** The Finish stage with the tram hall open. */
class FinishStageTest {
  @TempDir Path data;

  private DeskUnderTest desk;
  private DeskGestures hands;

  @BeforeEach
  void open() throws TimeoutException, IOException {
    for (String name : List.of("tram-hall.site.json", "heron-ring.svg")) {
      Files.copy(Path.of("sample-plans", name), data.resolve(name));
    }
    desk = DeskUnderTest.open(data, 1280, 800, List.of());
    hands = new DeskGestures(desk);
    DeskUnderTest.on(
        () -> {
          desk.room().plans().openPlan(data.resolve("tram-hall.site.json"));
          return null;
        });
    desk.settleAll();
    hands.stage(Stage.FINISH);
    desk.settleAll();
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private boolean says(String words) {
    return DeskUnderTest.on(
        () ->
            desk.stage().getScene().getRoot().lookupAll(".label").stream()
                .map(Label.class::cast)
                .anyMatch(l -> l.getText() != null && l.getText().contains(words)));
  }

  @Test
  void answers_change_the_advice_on_the_sealer() throws TimeoutException {
    assertThat(says("prefer a two-part topcoat over the sealer")).isTrue();
    hands.click("sealer-traffic").click("sealer-wet");
    assertThat(says("prefer a two-part topcoat over the sealer")).isFalse();
    assertThat(says("Put grit into the last coat")).isTrue();
  }

  @Test
  void show_takes_the_canvas_to_an_ignition_source() throws TimeoutException {
    Vec before = middle();
    Node show =
        DeskUnderTest.on(
            () ->
                desk.stage().getScene().getRoot().lookupAll(".button").stream()
                    .filter(b -> b.getAccessibleText() != null)
                    .filter(b -> b.getAccessibleText().contains("water heater: made safe"))
                    .findFirst()
                    .orElseThrow());
    DeskUnderTest.on(
        () -> {
          ((Button) show).fire();
          return null;
        });
    desk.settle();
    assertThat(middle().distanceTo(before)).isGreaterThan(500);
  }

  private Vec middle() {
    return DeskUnderTest.on(() -> hands.slab().viewport().toSite(400, 300));
  }
}
