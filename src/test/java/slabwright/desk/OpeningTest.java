package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.control.Label;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;
import slabwright.words.Words;

/** Opening a plan that comes slowly, as from a server: the work stands still until it is let go. */
class OpeningTest {
  @TempDir Path data;

  private final Brake brake = new Brake("errand");

  private DeskUnderTest open(List<String> plans) throws TimeoutException {
    SystemServices outside =
        new SystemServices(
            new FixedChooser(data), new NoPrinter(), f -> {}, brake, Words.english());
    return DeskUnderTest.open(data, 1280, 800, plans, outside);
  }

  private static void untilProgress(DeskUnderTest desk) throws TimeoutException {
    WaitForAsyncUtils.waitFor(
        20,
        TimeUnit.SECONDS,
        () ->
            DeskUnderTest.on(
                () -> desk.node("progress") != null && desk.node("progress").isVisible()));
  }

  private static String opening(DeskUnderTest desk) {
    return DeskUnderTest.on(
        () -> ((Label) desk.node("progress").lookup(".progress-words")).getText());
  }

  @Test
  void a_slow_plan_says_so_and_cancel_leaves_the_first_screen()
      throws TimeoutException, IOException {
    Path plan = TestSites.shed(data);
    try (DeskUnderTest desk = open(List.of())) {
      DeskGestures hands = new DeskGestures(desk);
      brake.set(true);
      hands.clickAndGo("start-open");
      untilProgress(desk);
      assertThat(opening(desk)).isEqualTo("Opening " + plan.getFileName());
      hands.clickAndGo("cancel-work");
      desk.settle();
      assertThat(DeskUnderTest.on(() -> desk.room().bench().desk().isOpen())).isFalse();
      hands.click("start-open");
      assertThat(hands.site().name()).isEqualTo("Tram shed");
    }
  }

  @Test
  void cancel_leaves_the_plan_that_was_open_as_it_was() throws TimeoutException, IOException {
    Path other = Files.createDirectories(data.resolve("other"));
    try (DeskUnderTest desk = open(List.of(TestSites.shed(data).toString()))) {
      DeskGestures hands = new DeskGestures(desk);
      hands.fill("site-name-field", "Kept");
      brake.set(true);
      DeskUnderTest.on(
          () -> {
            desk.room().plans().openPlan(TestSites.withArrow(other));
            return null;
          });
      untilProgress(desk);
      hands.clickAndGo("cancel-work");
      desk.settle();
      assertThat(hands.site().name()).isEqualTo("Kept");
      assertThat(hands.area().inlays()).isEmpty();
    }
  }
}
