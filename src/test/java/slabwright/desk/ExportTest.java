package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import javafx.animation.Animation;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.util.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;
import slabwright.desk.model.Stage;
import slabwright.desk.shell.NoticeBar;
import slabwright.sheets.page.PaperSize;
import slabwright.words.Words;

class ExportTest {
  @TempDir Path data;

  private final Brake brake = new Brake("errand");
  private final TestPrinter printer = new TestPrinter();
  private final List<Path> shown = new ArrayList<>();
  private DeskUnderTest desk;
  private DeskGestures hands;

  @BeforeEach
  void open() throws TimeoutException, IOException {
    Path plan = TestSites.withArrow(data);
    SystemServices outside =
        new SystemServices(new FixedChooser(data), printer, shown::add, brake, Words.english());
    desk = DeskUnderTest.open(data, 1280, 800, List.of(plan.toString()), outside);
    hands = new DeskGestures(desk);
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private Path out() {
    return data.resolve("out");
  }

  private String said() {
    return DeskUnderTest.on(() -> ((Label) desk.node("notice-words")).getText());
  }

  private List<String> saved() throws IOException {
    Path folder = out().resolve("tram-shed-draft");
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile)
          .map(p -> folder.relativize(p).toString())
          .sorted()
          .toList();
    }
  }

  @Test
  void a_cancelled_export_leaves_nothing_behind() throws TimeoutException, IOException {
    hands.stage(Stage.SHEETS);
    desk.settleAll();
    brake.set(true);
    hands.clickAndGo("export-svg");
    WaitForAsyncUtils.waitFor(
        10, TimeUnit.SECONDS, () -> DeskUnderTest.on(() -> desk.node("progress").isVisible()));
    hands.clickAndGo("cancel-work");
    brake.set(false);
    desk.settleAll();
    assertThat(out()).doesNotExist();
    assertThat(DeskUnderTest.on(() -> desk.node("progress").isVisible())).isFalse();
    hands.click("export-csv");
    assertThat(saved()).containsExactly("buy.csv", "quantities.csv", "takeoff.csv");
  }

  @Test
  void all_numbers_are_saved_as_json() throws TimeoutException, IOException {
    hands.stage(Stage.SHEETS);
    desk.settleAll();
    hands.click("export-json");
    assertThat(saved()).containsExactly("inlay-a1_i1.json", "tally.json", "work.json");
    assertThat(said()).startsWith("Saved 3 files in ").doesNotContain("older");
  }

  @Test
  void one_packet_is_saved_to_the_file_that_was_asked_for() throws TimeoutException, IOException {
    hands.stage(Stage.SHEETS);
    desk.settleAll();
    hands.choose("packet", "Sign shop").click("export-one");
    desk.settleAll();
    assertThat(said()).startsWith("Saved as ").endsWith("Sign shop.pdf");
    assertThat(Files.size(data.resolve("Tram shed, Sign shop.pdf"))).isGreaterThan(2000);
    assertThat(out()).doesNotExist();
  }

  @Test
  void what_was_saved_offers_its_folder_and_goes_away_by_itself()
      throws TimeoutException, IOException {
    hands.stage(Stage.SHEETS);
    desk.settleAll();
    hands.click("export-csv").click("open-folder");
    assertThat(shown).containsExactly(out());
    hands.move("fold-sheets");
    DeskUnderTest.on(
        () -> {
          Animation lasting = ((NoticeBar) desk.node("notice")).lasting();
          assertThat(lasting.getStatus()).isEqualTo(Animation.Status.RUNNING);
          lasting.jumpTo(lasting.getTotalDuration().subtract(Duration.millis(20)));
          return null;
        });
    WaitForAsyncUtils.waitFor(
        30, TimeUnit.SECONDS, () -> DeskUnderTest.on(() -> !desk.node("notice").isVisible()));
  }

  @Test
  void files_written_over_are_told() throws TimeoutException, IOException {
    hands.stage(Stage.SHEETS);
    desk.settleAll();
    hands.click("export-json");
    Files.delete(out().resolve("tram-shed-draft/work.json"));
    hands.click("export-json");
    assertThat(said())
        .isEqualTo("Saved 3 files in " + out() + ", 2 of them in place of older ones");
  }

  @Test
  void cut_files_of_the_inlay_are_saved_for_the_shop() throws TimeoutException, IOException {
    hands.stage(Stage.INLAY).click("export-cut");
    assertThat(saved())
        .containsExactly(
            "cut-a1_i1/arrow_draft_panel-A.pdf",
            "cut-a1_i1/arrow_draft_panel-A.svg",
            "cut-a1_i1/arrow_draft_panel-B.pdf",
            "cut-a1_i1/arrow_draft_panel-B.svg",
            "cut-a1_i1/arrow_draft_proof.pdf",
            "cut-a1_i1/arrow_draft_sign-shop.zip");
  }

  @Test
  void a_graphic_that_changed_since_it_was_accepted_is_not_cut()
      throws TimeoutException, IOException {
    hands.stage(Stage.SHEETS).click("issue");
    TestSites.arrow(data, 31);
    hands.click("export-cut");
    assertThat(said()).contains("changed on disk since it was accepted");
    assertThat(out()).doesNotExist();
  }

  @Test
  void pages_go_to_the_printer_the_person_chose() throws TimeoutException {
    hands.stage(Stage.SHEETS);
    desk.settleAll();
    hands.press(KeyCode.SHORTCUT, KeyCode.P);
    int pages = DeskUnderTest.on(() -> desk.room().parts().pages().pages().size());
    assertThat(printer.pages()).hasSize(pages);
    assertThat(printer.ended()).isTrue();
    assertThat(said()).isEqualTo(pages + " pages were sent to the printer");
  }

  @Test
  void sheets_larger_than_the_printers_paper_are_not_printed() throws TimeoutException {
    printer.paper(PaperSize.A4);
    hands.stage(Stage.SHEETS);
    desk.settleAll();
    hands.click("print");
    assertThat(said()).startsWith("The sheets are A3, larger than the paper in the printer");
    assertThat(printer.pages()).isEmpty();
  }

  @Test
  void printing_can_be_given_up() throws TimeoutException {
    hands.stage(Stage.SHEETS);
    desk.settleAll();
    brake.set(true);
    hands.clickAndGo("print");
    WaitForAsyncUtils.waitFor(
        10, TimeUnit.SECONDS, () -> DeskUnderTest.on(() -> desk.node("progress").isVisible()));
    hands.clickAndGo("cancel-work");
    brake.set(false);
    desk.settle();
    assertThat(printer.ended()).isFalse();
    assertThat(printer.cancelled()).isTrue();
  }
}
