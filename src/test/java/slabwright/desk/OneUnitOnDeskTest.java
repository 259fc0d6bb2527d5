package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import java.util.regex.Pattern;
import javafx.scene.control.Labeled;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.desk.model.Stage;

/** A plan in feet is shown in feet: who reads two numbers takes the wrong one. */
class OneUnitOnDeskTest {
  private static final Pattern METRIC =
      Pattern.compile("\\d (?:mm|cm|m|m²|kg|L|°C|m³/h)(?![\\w/²³])");

  @TempDir Path data;

  private static List<String> words(DeskUnderTest desk) {
    return DeskUnderTest.on(
        () ->
            desk.stage().getScene().getRoot().lookupAll(".label").stream()
                .map(n -> ((Labeled) n).getText())
                .filter(t -> t != null && METRIC.matcher(t).find())
                .toList());
  }

  @Test
  void no_stage_of_a_plan_in_feet_shows_a_metric_figure() throws IOException, TimeoutException {
    for (String name : List.of("tram-hall.site.json", "heron-ring.svg")) {
      Files.copy(Path.of("sample-plans", name), data.resolve(name));
    }
    Path plan = data.resolve("tram-hall.site.json");
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of(plan.toString()))) {
      DeskGestures hands = new DeskGestures(desk);
      desk.settleAll();
      for (Stage stage : Stage.values()) {
        hands.stage(stage);
        desk.settleAll();
        assertThat(words(desk)).as(stage.name()).isEmpty();
      }
    }
  }
}
