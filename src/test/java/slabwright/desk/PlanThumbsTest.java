package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Recent plans on the first screen, each with its picture. */
class PlanThumbsTest {
  @TempDir Path data;

  /** How many dots of each picture are drawn. */
  private static List<Integer> drawn(DeskUnderTest desk) {
    return DeskUnderTest.on(
        () -> {
          List<Integer> all = new ArrayList<>();
          for (Node n : desk.stage().getScene().getRoot().lookupAll(".plan-thumb")) {
            SnapshotParameters bare = new SnapshotParameters();
            bare.setFill(javafx.scene.paint.Color.MAGENTA);
            WritableImage shot = n.snapshot(bare, null);
            PixelReader dots = shot.getPixelReader();
            int bareDot = 0xffff00ff;
            int count = 0;
            for (int x = 0; x < shot.getWidth(); x++) {
              for (int y = 0; y < shot.getHeight(); y++) {
                count += dots.getArgb(x, y) == bareDot ? 0 : 1;
              }
            }
            all.add(count);
          }
          return all;
        });
  }

  @Test
  void a_recent_plan_is_seen_and_one_that_can_not_be_read_is_listed_all_the_same()
      throws TimeoutException, IOException {
    Path plan = TestSites.shed(data);
    Path broken = data.resolve("broken.site.json");
    Files.copy(plan, broken);
    for (Path p : List.of(broken, plan)) {
      DeskUnderTest.open(data, 1280, 800, List.of(p.toString())).close();
    }
    Files.writeString(broken, "no plan");
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of())) {
      desk.settle();
      List<Integer> dots = drawn(desk);
      assertThat(dots).hasSize(2);
      assertThat(dots.get(0)).as("dots of the plan").isGreaterThan(800);
      assertThat(dots.get(1)).as("dots of what is no plan").isBetween(60, 400);
      new DeskGestures(desk).click("recent-1");
      assertThat(DeskUnderTest.on(() -> desk.room().bench().desk().site().name()))
          .isEqualTo("Tram shed");
    }
  }
}
