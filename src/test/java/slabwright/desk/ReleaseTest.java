package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;
import slabwright.desk.model.Stage;
import slabwright.shape.Vec;
import slabwright.words.Words;

class ReleaseTest {
  @TempDir Path data;

  private DeskUnderTest desk;
  private DeskGestures hands;

  private void open() throws TimeoutException {
    Path plan = data.resolve("shed.site.json");
    desk = DeskUnderTest.open(data, 1280, 800, List.of(plan.toString()));
    hands = new DeskGestures(desk);
  }

  @AfterEach
  void close() {
    desk.close();
  }

  /** Every sentence under the release, without the sign. */
  private List<String> changes() {
    return DeskUnderTest.on(
        () ->
            ((Parent) desk.node("changes"))
                .lookupAll(".label").stream()
                    .map(n -> ((Label) n).getText())
                    .filter(t -> t.length() > 1)
                    .map(t -> t.replaceFirst("^· ", ""))
                    .toList());
  }

  /** What a reader hears of a stage. */
  private String stage(Stage s) {
    return DeskUnderTest.on(() -> desk.node("stage-" + s.name()).getAccessibleText());
  }

  @Test
  void what_changed_since_a_release_is_told_after_opening_again()
      throws TimeoutException, IOException {
    TestSites.withArrow(data);
    open();
    hands.stage(Stage.SHEETS);
    desk.settleAll();
    hands.fill("release-note", "to the client").click("issue");
    assertThat(hands.site().releases().get(0).note()).isEqualTo("to the client");
    assertThat(changes())
        .containsExactly("Nothing changed; sheets and cut files carry the release.");
    hands.press(KeyCode.SHORTCUT, KeyCode.S);
    desk.close();
    open();
    hands.stage(Stage.MARK).click("tool-ISLAND");
    hands.drag(new Vec(1000, 1000), new Vec(2000, 1600));
    hands.stage(Stage.SHEETS);
    assertThat(changes())
        .containsExactly(
            "Sheets and cut files say draft until the next release.", "Island \"island 1\" added");
  }

  @Test
  void a_graphic_changed_on_disk_stands_out_until_it_is_accepted()
      throws TimeoutException, IOException {
    TestSites.withArrow(data);
    open();
    hands.stage(Stage.SHEETS).click("issue").press(KeyCode.SHORTCUT, KeyCode.S);
    TestSites.arrow(data, 34);
    desk.close();
    open();
    hands.stage(Stage.SHEETS);
    assertThat(changes()).contains("Graphic of \"Arrow\" changed on disk");
    assertThat(stage(Stage.INLAY)).isEqualTo("Inlay, needs a look");
    hands.stage(Stage.INLAY).click("accept-graphic");
    assertThat(desk.node("accept-graphic")).isNull();
    hands.stage(Stage.SHEETS);
    assertThat(changes()).contains("Inlay \"Arrow\": graphic replaced");
    assertThat(stage(Stage.INLAY)).isEqualTo("Inlay, done");
    assertThat(stage(Stage.SHEETS)).isEqualTo("Sheets, needs a look");
  }

  @Test
  void nothing_is_said_of_a_plan_before_its_graphics_and_releases_were_read()
      throws TimeoutException, IOException {
    TestSites.withArrow(data);
    open();
    hands.stage(Stage.SHEETS).click("issue").press(KeyCode.SHORTCUT, KeyCode.S);
    desk.close();
    TestSites.arrow(data, 34);
    Brake brake = new Brake("releases");
    Path plan = data.resolve("shed.site.json");
    brake.set(true);
    desk =
        DeskUnderTest.open(
            data,
            1280,
            800,
            List.of(),
            new SystemServices(
                new FixedChooser(data), new NoPrinter(), f -> {}, brake, Words.english()));
    DeskUnderTest.on(
        () -> {
          desk.room().plans().openPlan(plan);
          return null;
        });
    WaitForAsyncUtils.waitFor(
        20, TimeUnit.SECONDS, () -> DeskUnderTest.on(() -> desk.node("stage-INLAY") != null));
    desk.laidOut();
    assertThat(stage(Stage.INLAY)).isEqualTo("Inlay, not started");
    assertThat(stage(Stage.SHEETS)).isEqualTo("Sheets, not started");
    brake.set(false);
    desk.settle();
    assertThat(stage(Stage.INLAY)).isEqualTo("Inlay, needs a look");
    assertThat(stage(Stage.SHEETS)).isEqualTo("Sheets, needs a look");
  }

  @Test
  void a_release_of_a_plan_without_a_file_goes_along_when_it_is_saved() throws TimeoutException {
    desk = DeskUnderTest.open(data, 1280, 800, List.of());
    hands = new DeskGestures(desk);
    hands.click("start-tape");
    hands.line("6 m").line("r 4 m").line("r 6 m").line("4 m").press(KeyCode.ENTER);
    assertThat(hands.corners()).hasSize(4);
    hands.stage(Stage.SHEETS).click("issue").press(KeyCode.SHORTCUT, KeyCode.S);
    assertThat(data.resolve("saved").resolve("new-site-release-1")).isDirectory();
    assertThat(changes())
        .containsExactly("Nothing changed; sheets and cut files carry the release.");
  }

  @Test
  void a_number_that_was_issued_is_never_issued_again() throws TimeoutException, IOException {
    TestSites.shed(data);
    open();
    hands.stage(Stage.SHEETS).click("issue");
    hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(hands.site().releases()).isEmpty();
    hands.click("issue");
    assertThat(hands.site().releaseNumber()).isEqualTo(2);
  }
}
