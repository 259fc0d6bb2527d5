package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.desk.model.Stage;
import slabwright.work.book.BookSamples;

/** The shop book changed with real keys, in its form and after a job. */
class ShopBookDeskTest {
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

  private String book() throws IOException {
    return Files.readString(data.resolve("shop.book"));
  }

  @Test
  void a_typed_value_is_written_beside_the_plan_with_all_comments_and_the_job_follows()
      throws TimeoutException, IOException {
    hands.fill("book-people", "2");
    desk.settleAll();
    assertThat(book()).isEqualTo(BookSamples.text().text().replace("people = 3", "people = 2"));
    assertThat(
            DeskUnderTest.on(
                () ->
                    desk.room()
                        .parts()
                        .job()
                        .done()
                        .orElseThrow()
                        .work()
                        .book()
                        .crew()
                        .people()
                        .maybe()))
        .contains(2);
  }

  @Test
  void a_value_is_taken_back_by_undo_in_its_turn_among_the_edits_of_the_plan()
      throws TimeoutException, IOException {
    hands.fill("book-people", "2");
    hands.fill("slab-mohs", "6");
    desk.settleAll();
    hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(book()).as("the plan's edit was the last").contains("people = 2");
    assertThat(mohs()).isEqualTo(5.5);
    hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    desk.settleAll();
    assertThat(book()).isEqualTo(BookSamples.text().text());
    hands.press(KeyCode.SHORTCUT, KeyCode.Y);
    desk.settleAll();
    assertThat(book()).contains("people = 2");
    hands.press(KeyCode.SHORTCUT, KeyCode.Y);
    assertThat(mohs()).isEqualTo(6);
  }

  private double mohs() {
    return DeskUnderTest.on(
        () -> desk.room().bench().focus().area().orElseThrow().slab().mohs().getAsDouble());
  }

  @Test
  void the_bar_says_price_and_days() {
    assertThat(figure("days")).matches("[1-9]\\d*");
    assertThat(figure("price")).matches("[1-9][\\d,]+ USD");
  }

  private String figure(String what) {
    return DeskUnderTest.on(() -> ((Labeled) desk.node("tally-" + what)).getText());
  }

  @Test
  void a_value_that_can_not_be_read_is_not_written() throws TimeoutException {
    hands.fill("book-people", "many");
    assertThat(data.resolve("shop.book")).doesNotExist();
  }

  @Test
  void what_was_poured_is_shown_as_old_and_new_and_written_when_asked()
      throws TimeoutException, IOException {
    hands.fill("actual-sealer", "5 gal");
    assertThat(data.resolve("shop.book")).doesNotExist();
    hands.click("actual-write");
    desk.settleAll();
    assertThat(book()).contains("coverage = 344.2 ft2/gal").contains("# for one person");
  }
}
