package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.site.Underlay;

/** A PDF of a red page and a larger blue one, laid under a plan. */
class UnderlayPagesTest {
  @TempDir Path data;

  private Path pdf;
  private DeskUnderTest desk;
  private DeskGestures hands;

  @BeforeEach
  void layThePdf() throws TimeoutException, IOException {
    pdf = Files.createDirectories(data.resolve("from-the-client")).resolve("Halls.PDF");
    try (PDDocument document = new PDDocument()) {
      page(document, PDRectangle.A4, Color.RED);
      page(document, new PDRectangle(7200, 3600), Color.BLUE);
      document.save(pdf.toFile());
    }
    Path plan = TestSites.shed(data);
    desk = DeskUnderTest.open(data, 1280, 800, List.of(plan.toString()));
    hands = new DeskGestures(desk);
    drop(pdf);
  }

  private void drop(Path file) throws TimeoutException {
    DeskUnderTest.on(
        () -> {
          desk.room().drops().open(file);
          return null;
        });
    desk.settle();
  }

  private static void page(PDDocument document, PDRectangle size, Color colour) throws IOException {
    PDPage page = new PDPage(size);
    document.addPage(page);
    try (PDPageContentStream out = new PDPageContentStream(document, page)) {
      out.setNonStrokingColor(colour);
      out.addRect(0, 0, size.getWidth(), size.getHeight());
      out.fill();
    }
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private Underlay underlay() {
    return hands.site().underlay().orElseThrow();
  }

  private Color colour() throws IOException {
    return new Color(ImageIO.read(data.resolve(underlay().file()).toFile()).getRGB(300, 300));
  }

  private String page() {
    return DeskUnderTest.on(() -> Fields.text(desk.node("picture-page")));
  }

  private List<String> faults() {
    return DeskUnderTest.on(
        () ->
            desk.stage().getScene().getRoot().lookupAll(".field-wrong").stream()
                .filter(n -> n.isVisible())
                .map(n -> ((Label) n).getText())
                .toList());
  }

  @Test
  void another_page_is_laid_where_the_first_one_lay_at_the_same_scale_of_paper()
      throws TimeoutException, IOException {
    assertThat(underlay().file()).isEqualTo("Halls.png");
    assertThat(colour()).isEqualTo(Color.RED);
    assertThat(page()).isEqualTo("1");
    double first = 210 / (underlay().placing().a() * width());
    hands.fill("picture-page", "2");
    assertThat(underlay().file()).isEqualTo("Halls-page-2.png");
    assertThat(colour()).isEqualTo(Color.BLUE);
    assertThat(page()).isEqualTo("2");
    assertThat(2540 / (underlay().placing().a() * width())).isCloseTo(first, within(1e-4));
  }

  private int width() throws IOException {
    return ImageIO.read(data.resolve(underlay().file()).toFile()).getWidth();
  }

  @Test
  void undo_lays_the_page_before_and_it_can_be_turned_again() throws TimeoutException, IOException {
    hands.fill("picture-page", "2");
    hands.clickSlab(4000, 3000).press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(colour()).isEqualTo(Color.RED);
    assertThat(page()).isEqualTo("1");
    hands.fill("picture-page", "2");
    assertThat(colour()).isEqualTo(Color.BLUE);
  }

  @Test
  void a_page_that_is_not_there_is_refused_with_the_range() throws TimeoutException, IOException {
    for (String wrong : List.of("3", "0", "1.5", "two")) {
      hands.fill("picture-page", wrong);
      assertThat(faults()).containsExactly("Write a page number from 1 to 2.");
    }
    assertThat(colour()).isEqualTo(Color.RED);
  }

  @Test
  void a_pdf_that_is_gone_is_told_and_the_picture_stays() throws TimeoutException, IOException {
    Files.delete(pdf);
    hands.fill("picture-page", "2");
    String said = DeskUnderTest.on(() -> ((Label) desk.node("notice-words")).getText());
    assertThat(said).endsWith("Halls.PDF is not there any more; lay the PDF again.");
    assertThat(colour()).isEqualTo(Color.RED);
  }

  @Test
  void a_pdf_of_one_page_asks_for_none() throws TimeoutException, IOException {
    Path one = pdf.resolveSibling("one.pdf");
    try (PDDocument document = new PDDocument()) {
      page(document, PDRectangle.A4, Color.GREEN);
      document.save(one.toFile());
    }
    drop(one);
    assertThat(underlay().file()).isEqualTo("one.png");
    assertThat(DeskUnderTest.on(() -> desk.node("picture-page"))).isNull();
  }
}
