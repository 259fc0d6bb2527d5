package slabwright.pdfin.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.junit.jupiter.api.Test;
import slabwright.shape.Bounds;
import slabwright.shape.FillRule;
import slabwright.shape.Region;
import slabwright.units.Result;

class PdfOutlinesTest {
  private interface Draws {
    void on(PDPageContentStream content) throws IOException;
  }

  /** A page of 10 by 10 inches. */
  private static PdfOutlines page(float userUnit, Draws draws) throws IOException {
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage(new PDRectangle(720, 720));
      page.setUserUnit(userUnit);
      document.addPage(page);
      try (PDPageContentStream content = new PDPageContentStream(document, page)) {
        draws.on(content);
      }
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return PdfOutlines.read(out.toByteArray(), 1).orThrow();
    }
  }

  @Test
  void a_page_that_asks_for_too_much_is_refused_in_a_sentence() throws IOException {
    String clip = "0 0 9 9 re W n ";
    assertThat(refused("q ".repeat(1000))).contains("state-too-deep");
    assertThat(refused("0 0 m " + "1 1 l ".repeat(1_000_001) + "S")).contains("too-many-points");
    assertThat(refused("0 0 9 9 re f ".repeat(100_001))).contains("too-many-shapes");
    assertThat(refused((clip + "q ").repeat(600))).contains("state-too-deep");
  }

  private static String refused(String operators) throws IOException {
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage();
      document.addPage(page);
      PDStream content = new PDStream(document);
      try (OutputStream to = content.createOutputStream(COSName.FLATE_DECODE)) {
        to.write(operators.getBytes(StandardCharsets.US_ASCII));
      }
      page.setContents(content);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return PdfOutlines.read(out.toByteArray(), 1) instanceof Result.Refused<PdfOutlines> r
          ? r.message().key()
          : "read";
    }
  }

  @Test
  void a_filled_rectangle_has_its_place_size_and_colour() throws IOException {
    PdfOutlines read =
        page(
            1,
            c -> {
              c.setNonStrokingColor(1f, 0f, 0f);
              c.addRect(72, 576, 144, 72);
              c.fill();
            });
    PdfOutline only = read.outlines().get(0);
    assertThat(only.fill()).contains("#ff0000");
    Bounds b = only.rings().get(0).bounds();
    assertThat(b.minX()).isCloseTo(25.4, within(1e-3));
    assertThat(b.minY()).isCloseTo(25.4, within(1e-3));
    assertThat(b.width()).isCloseTo(50.8, within(1e-3));
    assertThat(b.height()).isCloseTo(25.4, within(1e-3));
  }

  @Test
  void a_user_unit_enlarges() throws IOException {
    PdfOutlines read =
        page(
            10,
            c -> {
              c.addRect(72, 576, 144, 72);
              c.stroke();
            });
    assertThat(read.outlines().get(0).rings().get(0).bounds().width()).isCloseTo(508, within(1e-2));
    assertThat(read.outlines().get(0).fill()).isEqualTo(Optional.empty());
  }

  @Test
  void an_even_odd_fill_keeps_its_rule_and_its_hole() throws IOException {
    PdfOutlines read =
        page(
            1,
            c -> {
              c.addRect(72, 72, 144, 144);
              c.addRect(108, 108, 72, 72);
              c.fillEvenOdd();
            });
    PdfOutline only = read.outlines().get(0);
    assertThat(only.rule()).isEqualTo(FillRule.EVEN_ODD);
    assertThat(Region.of(only.rings(), only.rule()).area())
        .isCloseTo(50.8 * 50.8 - 25.4 * 25.4, within(0.1));
  }

  @Test
  void curves_follow_the_transform_in_force() throws IOException {
    double k = 0.5522847498;
    PdfOutlines read =
        page(
            1,
            c -> {
              c.transform(new org.apache.pdfbox.util.Matrix(2, 0, 0, 2, 100, 100));
              c.moveTo(100, 50);
              float q = (float) (50 * k);
              c.curveTo(100, 50 + q, 50 + q, 100, 50, 100);
              c.curveTo(50 - q, 100, 0, 50 + q, 0, 50);
              c.curveTo(0, 50 - q, 50 - q, 0, 50, 0);
              c.curveTo(50 + q, 0, 100, 50 - q, 100, 50);
              c.closeAndStroke();
            });
    double mm = 100 * 25.4 / 72;
    assertThat(Math.abs(read.outlines().get(0).rings().get(0).signedArea()))
        .isCloseTo(Math.PI * mm * mm, within(Math.PI * mm * mm * 0.002));
  }

  @Test
  void an_open_line_is_no_outline_and_text_is_said() throws IOException {
    PdfOutlines read =
        page(
            1,
            c -> {
              c.moveTo(10, 10);
              c.lineTo(100, 10);
              c.lineTo(100, 100);
              c.stroke();
              c.beginText();
              c.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 12);
              c.showText("Job 17");
              c.endText();
            });
    assertThat(read.outlines()).isEmpty();
    assertThat(read.lines()).hasSize(1);
    assertThat(read.words()).hasSize(1);
  }

  @Test
  void what_is_no_pdf_is_refused_in_a_sentence() {
    Result<PdfOutlines> read = PdfOutlines.read(new byte[] {1, 2, 3}, 1);
    assertThat(read.isOk()).isFalse();
  }
}
