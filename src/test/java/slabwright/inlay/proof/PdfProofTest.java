package slabwright.inlay.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.junit.jupiter.api.Test;
import slabwright.pdfin.outline.PdfOutlines;
import slabwright.shape.Affine;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** A shop that answers with a PDF. */
class PdfProofTest {
  private static final float POINTS = (float) (72 / 25.4);
  private final ProofCases bicycle = ProofCases.icon("bicycle.svg");

  /** The blank 100 mm from the corner of a page of 1.4 m; PDF's y runs up. */
  private ShopDrawing drawing(Affine pose) throws IOException {
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage(new PDRectangle(1400 * POINTS, 1400 * POINTS));
      document.addPage(page);
      try (PDPageContentStream c = new PDPageContentStream(document, page)) {
        Affine there =
            pose.then(new Affine(1, 0, 0, -1, 100, 1300)).then(Affine.scale(POINTS, POINTS));
        draw(c, bicycle.openings().rings(), there);
        c.fillEvenOdd();
        draw(
            c,
            List.of(Ring.rectangle(0, 0, bicycle.blank().maxX(), bicycle.blank().maxY())),
            there);
        c.stroke();
      }
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return ShopDrawing.of(PdfOutlines.read(out.toByteArray(), 1).orThrow());
    }
  }

  private static void draw(PDPageContentStream c, List<Ring> rings, Affine there)
      throws IOException {
    for (Ring ring : rings) {
      List<Vec> p = ring.map(there).points();
      c.moveTo((float) p.get(0).x(), (float) p.get(0).y());
      for (Vec v : p.subList(1, p.size())) {
        c.lineTo((float) v.x(), (float) v.y());
      }
      c.closePath();
    }
  }

  @Test
  void a_right_pdf_has_no_fault() throws IOException {
    ShopDrawing d = drawing(Affine.IDENTITY);
    ProofReport r = ProofCheck.run(bicycle.plan(), d, ShadingMeaning.PULLED_OUT);
    assertThat(r.faults()).isEmpty();
    assertThat(r.notes()).isEmpty();
  }

  @Test
  void a_pdf_that_is_upside_down_in_y_is_mirrored() throws IOException {
    ShopDrawing d = drawing(new Affine(1, 0, 0, -1, 0, bicycle.blank().maxY()));
    ProofReport r = ProofCheck.run(bicycle.plan(), d, ShadingMeaning.PULLED_OUT);
    assertThat(r.faults()).containsExactly(new ProofFault.Mirrored());
  }

  /** The blank at 1:10 on an A4 page with a title block of real words. */
  private ShopDrawing fitted(String note) throws IOException {
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage(PDRectangle.A4);
      document.addPage(page);
      try (PDPageContentStream c = new PDPageContentStream(document, page)) {
        Affine there = new Affine(0.1, 0, 0, -0.1, 20, 277).then(Affine.scale(POINTS, POINTS));
        draw(c, bicycle.openings().rings(), there);
        c.fillEvenOdd();
        draw(
            c,
            List.of(Ring.rectangle(0, 0, bicycle.blank().maxX(), bicycle.blank().maxY())),
            there);
        c.stroke();
        c.beginText();
        c.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 12);
        c.newLineAtOffset(60, 60);
        c.showText(note);
        c.endText();
      }
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return ShopDrawing.of(PdfOutlines.read(out.toByteArray(), 1).orThrow());
    }
  }

  @Test
  void a_page_that_states_its_scale_is_judged_at_that_size() throws IOException {
    ProofReport right =
        ProofCheck.run(bicycle.plan(), fitted("Scale 1:10"), ShadingMeaning.PULLED_OUT);
    assertThat(right.verdict()).isEqualTo(ProofVerdict.CUT);
    ProofReport wrong =
        ProofCheck.run(bicycle.plan(), fitted("Scale 1:12"), ShadingMeaning.PULLED_OUT);
    assertThat(wrong.faults()).extracting(ProofFault::kind).containsExactly("size-off");
  }

  @Test
  void a_fitted_page_without_a_scale_cannot_be_judged_in_size() throws IOException {
    ProofReport r =
        ProofCheck.run(bicycle.plan(), fitted("Sheet 1 of 1"), ShadingMeaning.PULLED_OUT);
    assertThat(r.verdict()).isEqualTo(ProofVerdict.CANNOT_TELL);
    assertThat(r.faults()).isEmpty();
    assertThat(r.notes()).extracting(ProofNote::kind).contains("scale-cannot-be-told");
  }
}
