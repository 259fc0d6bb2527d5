package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static slabwright.units.UnitSystem.FEET_INCHES;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.desk.model.Stage;
import slabwright.project.SiteTally;
import slabwright.shape.Vec;
import slabwright.store.PlanFile;
import slabwright.units.LengthFormat;

/** The Prep stage of the sample: the curve reads off, Show goes to the narrowest pass. */
class PrepStageTest {
  @TempDir Path data;

  @Test
  void the_curve_reads_off_where_it_is_pointed_at_and_show_goes_to_the_pass()
      throws TimeoutException, IOException {
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of())) {
      DeskUnderTest.on(
          () -> {
            desk.room().plans().openSample();
            return null;
          });
      desk.settle();
      DeskUnderTest.on(
          () -> {
            desk.room().bench().focus().goTo(Stage.PREP);
            return null;
          });
      desk.settleAll();
      assertThat(words(desk)).anyMatch(w -> w.startsWith("2′ 5″ wide: "));
      DeskUnderTest.on(() -> point(desk, 299));
      assertThat(words(desk)).anyMatch(w -> w.startsWith("4′ 3"));
      assertThat(words(desk)).anyMatch(w -> w.contains("a machine up to 1′ 2 9/16″ wide"));
      for (JsonNode passage : passages()) {
        String spare = LengthFormat.show(Math.abs(passage.get("spare_mm").asDouble()), FEET_INCHES);
        assertThat(words(desk))
            .as(passage.toString())
            .anyMatch(w -> w.contains(passage.get("place").asText()) && w.contains(spare));
      }
      Vec pass =
          desk.room().parts().ways().ways().orElseThrow().pockets().get(0).pass().get().where();
      double before = scale(desk);
      DeskUnderTest.on(() -> show(desk));
      desk.settle();
      assertThat(scale(desk)).isGreaterThan(before);
      assertThat(desk.room().slab().viewport().toScreen(pass).x()).isBetween(0.0, 1280.0);
    }
  }

  @Test
  void a_trench_drawn_by_its_corners_is_named_without_a_length()
      throws IOException, TimeoutException {
    Path plan = TestSites.withTrench(data);
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of(plan.toString()))) {
      desk.settle();
      DeskUnderTest.on(
          () -> {
            desk.room().bench().focus().goTo(Stage.PREP);
            return null;
          });
      desk.settleAll();
      assertThat(words(desk)).anyMatch(w -> w.startsWith("pipe trench, 2.00 m², "));
    }
  }

  /** The doorways of the reading hall as the numbers of the job tell them. */
  private static List<JsonNode> passages() throws IOException {
    Path plan = Path.of("sample-plans/tram-hall.site.json");
    JsonNode tally =
        new ObjectMapper().readTree(SiteTally.of(PlanFile.read(plan).orThrow(), plan).json());
    List<JsonNode> doorways = new ArrayList<>();
    for (JsonNode p : tally.get("passages")) {
      if (p.has("doorway") && p.get("area").asText().equals("reading-hall")) {
        doorways.add(p);
      }
    }
    assertThat(doorways).isNotEmpty();
    return doorways;
  }

  private static double scale(DeskUnderTest desk) {
    return desk.room().slab().viewport().scale();
  }

  private static List<String> words(DeskUnderTest desk) {
    return DeskUnderTest.on(
        () ->
            desk.stage().getScene().getRoot().lookupAll(".label").stream()
                .filter(Label.class::isInstance)
                .map(n -> ((Label) n).getText().replace('\u00a0', ' '))
                .toList());
  }

  private static Void point(DeskUnderTest desk, double x) {
    Canvas canvas = (Canvas) desk.node("reach-curve");
    var at = canvas.localToScene(x, 60);
    canvas.fireEvent(
        new MouseEvent(
            MouseEvent.MOUSE_MOVED,
            at.getX(),
            at.getY(),
            at.getX(),
            at.getY(),
            MouseButton.NONE,
            0,
            false,
            false,
            false,
            false,
            false,
            false,
            false,
            true,
            false,
            true,
            null));
    return null;
  }

  private static Void show(DeskUnderTest desk) {
    for (Node n : desk.stage().getScene().getRoot().lookupAll(".button")) {
      if (n instanceof Button b
          && b.getAccessibleText() != null
          && b.getAccessibleText().startsWith("Show where: Pocket")) {
        b.fire();
      }
    }
    return null;
  }
}
