package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.input.KeyCode;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.desk.model.Stage;
import slabwright.drawing.TextBox;
import slabwright.inlay.ComputedInlay;
import slabwright.inlay.InlayPlan;
import slabwright.site.JobDetails;
import slabwright.site.job.Party;
import slabwright.store.PlanFile;
import slabwright.units.UnitSystem;

/** Whose names stand on the papers, and which page of a client's PDF is laid. */
class PapersTest {
  @TempDir Path data;

  private List<String> printed(DeskUnderTest desk) throws TimeoutException {
    desk.settleAll();
    return DeskUnderTest.on(
        () ->
            TextBox.of(desk.room().parts().pages().page().orElseThrow().drawing()).stream()
                .map(TextBox::words)
                .toList());
  }

  @Test
  void names_typed_on_the_card_are_saved_undone_and_stand_on_every_page()
      throws TimeoutException, IOException {
    Path plan = TestSites.shed(data);
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of(plan.toString()))) {
      DeskGestures hands = new DeskGestures(desk);
      hands.fill("contractor-name", "Level Floors").fill("contractor-phone", "555 0100");
      hands.fill("client-name", "Shed Society").fill("client-address", "2 Rail Road; Town");
      hands.choose("crew-language", "Spanish");
      JobDetails job = hands.site().job();
      assertThat(job.contractor()).isEqualTo(new Party("Level Floors", "", "555 0100", "", ""));
      assertThat(job.client())
          .isEqualTo(new Party("Shed Society", "", "", "", "2 Rail Road\nTown"));
      assertThat(job.crew().language()).isEqualTo("es");
      hands.stage(Stage.SHEETS);
      assertThat(printed(desk)).contains("Level Floors", "555 0100", "for Shed Society");
      hands.fill("client-name", "Another");
      assertThat(printed(desk)).contains("for Another");
      hands.press(KeyCode.SHORTCUT, KeyCode.Z);
      assertThat(hands.site().job()).isEqualTo(job);
      hands.press(KeyCode.SHORTCUT, KeyCode.S);
      assertThat(PlanFile.read(plan).orThrow().job()).isEqualTo(job);
    }
  }

  @Test
  void a_mark_that_is_chosen_is_kept_in_the_plan_and_for_the_next_and_comes_off()
      throws TimeoutException, IOException {
    Path plan = TestSites.shed(data);
    Files.copy(Path.of("docs/pictures/desk-inlay.png"), data.resolve("photo.jpg"));
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of(plan.toString()))) {
      DeskGestures hands = new DeskGestures(desk);
      hands.fill("contractor-name", "Level Floors").click("contractor-mark-choose");
      desk.settleAll();
      assertThat(hands.site().job().contractor().mark()).isPresent();
      hands.press(KeyCode.SHORTCUT, KeyCode.S);
      assertThat(PlanFile.read(plan).orThrow().job().contractor().mark()).isPresent();
      assertThat(DeskUnderTest.on(() -> desk.room().bench().settings().contractor()))
          .isEqualTo(hands.site().job().contractor());
      hands.click("contractor-mark-away");
      assertThat(hands.site().job().contractor().mark()).isEmpty();
    }
  }

  @Test
  void a_new_plan_begins_with_the_contractor_of_the_last_and_no_client()
      throws TimeoutException, IOException {
    Path plan = TestSites.shed(data);
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of(plan.toString()))) {
      DeskGestures hands = new DeskGestures(desk);
      hands.fill("contractor-name", "Level Floors").fill("client-name", "Shed Society");
    }
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of())) {
      DeskUnderTest.on(
          () -> {
            desk.room().parts().keeper().begin("next", UnitSystem.METRIC);
            return null;
          });
      desk.settle();
      JobDetails job = new DeskGestures(desk).site().job();
      assertThat(job.contractor().name()).isEqualTo("Level Floors");
      assertThat(job.client()).isEqualTo(Party.UNKNOWN);
    }
  }

  private static void bar(PDDocument document, float width) throws IOException {
    PDPage page = new PDPage(new PDRectangle(200, 200));
    document.addPage(page);
    try (PDPageContentStream out = new PDPageContentStream(document, page)) {
      out.setNonStrokingColor(Color.BLUE);
      out.addRect(50, 50, width, 100);
      out.fill();
    }
  }

  private static double openings(DeskUnderTest desk) {
    return DeskUnderTest.on(
        () ->
            desk.room().parts().answers().inlays().stream()
                .map(ComputedInlay::plan)
                .flatMap(p -> p.stream())
                .mapToDouble(InlayPlan::openingArea)
                .sum());
  }

  @Test
  void the_second_page_of_a_pdf_is_laid_in_place_of_the_first()
      throws TimeoutException, IOException {
    Path pdf = Files.createDirectories(data.resolve("client")).resolve("bars.pdf");
    try (PDDocument document = new PDDocument()) {
      bar(document, 25);
      bar(document, 100);
      document.save(pdf.toFile());
    }
    Path plan = TestSites.shed(data);
    Chooser chooser = new FixedChooser(data, pdf);
    try (DeskUnderTest desk =
        DeskUnderTest.open(data, chooser, 1280, 800, List.of(plan.toString()))) {
      DeskGestures hands = new DeskGestures(desk);
      hands.stage(Stage.INLAY).click("choose-graphic");
      desk.settle();
      assertThat(DeskUnderTest.on(() -> Fields.text(desk.node("inlay-page")))).isEqualTo("1");
      double first = openings(desk);
      hands.fill("inlay-page", "1.5");
      assertThat(hands.area().inlays().get(0).source().page()).isEmpty();
      hands.fill("inlay-page", "2");
      desk.settle();
      assertThat(hands.area().inlays().get(0).source().page()).hasValue(2);
      assertThat(openings(desk)).isNotEqualTo(first);
    }
  }
}
