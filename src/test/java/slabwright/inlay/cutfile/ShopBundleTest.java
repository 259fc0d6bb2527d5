package slabwright.inlay.cutfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import slabwright.drawing.Drawing;
import slabwright.drawing.TextBox;
import slabwright.drawing.paint.PdfFile;
import slabwright.inlay.Graphics;
import slabwright.inlay.panel.PanelParameters;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.panel.Roll;
import slabwright.inlay.panel.SeamPlanner;
import slabwright.inlay.panel.StripDirection;
import slabwright.inlay.stencil.Stencil;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.Affine;
import slabwright.shape.Region;
import slabwright.units.Message;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

class ShopBundleTest {
  private static final StencilSet SET = Graphics.one(Graphics.letterF(2000).union(ringBeside()));
  private static final PanelPlan PLAN = new SeamPlanner(SET, PanelParameters.usual()).best();
  private static final ShopBundle BUNDLE =
      new ShopBundle(
          new CutFileParameters("Letter and ring", 2),
          SET,
          PLAN,
          FilmOrder.onRoll(1219.2),
          UnitSystem.FEET_INCHES,
          Instant.parse("2026-11-25T08:00:00Z"),
          Words.english()::say);

  @Test
  void the_zip_holds_a_cut_file_for_each_panel_the_pdfs_and_the_order() throws IOException {
    Map<String, byte[]> files = unzip(zip());
    assertThat(files.keySet())
        .contains(
            "letter-and-ring_release-2_panel-A.svg",
            "letter-and-ring_release-2_panel-B.svg",
            "letter-and-ring_release-2_cut.pdf",
            "letter-and-ring_release-2_proof.pdf",
            "letter-and-ring_release-2_order.txt");
    String order =
        new String(files.get("letter-and-ring_release-2_order.txt"), StandardCharsets.UTF_8);
    assertThat(order).contains("Do not mirror").contains("Film width: 4′ 0″ (1219.2 mm)");
    assertThat(order)
        .as("whose panels are whose, and which way up")
        .contains(": panels A, B")
        .contains("an arrow to the top")
        .contains("beside each registration tick (a cross in a ring) its number");
  }

  @Test
  void the_order_leaves_nothing_to_guess_and_no_panel_is_cut_twice() throws IOException {
    String order =
        new String(unzip(zip()).get("letter-and-ring_release-2_order.txt"), StandardCharsets.UTF_8);
    assertThat(order)
        .doesNotContain("to be agreed")
        .contains("Film: paint mask film, matte, low tack")
        .contains("Film color: any; the film is pulled off")
        .contains("Test piece: one uncut piece of the same film, 1′ 0″ × 1′ 0″")
        .contains("Packing: each stencil by itself")
        .contains("_cut.pdf holds the same panels again")
        .contains("never from both");
  }

  @Test
  void the_same_plan_gives_the_same_bytes() throws IOException {
    assertThat(zip()).isEqualTo(zip());
  }

  @Test
  void the_cut_pdf_has_one_page_a_panel_in_true_size_and_no_words() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(bytes(BUNDLE.cutPdf()))) {
      assertThat(pdf.getNumberOfPages()).isEqualTo(PLAN.panels().size());
      double mm = pdf.getPage(0).getMediaBox().getWidth() * 25.4 / 72;
      assertThat(mm).isCloseTo(PLAN.panels().get(0).box().width(), within(0.01));
      assertThat(new PDFTextStripper().getText(pdf)).isBlank();
    }
  }

  @Test
  void a_page_over_200_inches_keeps_its_true_size_by_a_larger_unit() throws IOException {
    CutFile wall =
        new CutFile(
            "wall",
            Message.of("inlay.cut-file.draft"),
            1000,
            9000,
            Region.empty(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            Optional.empty());
    PdfFile file = PdfCutWriter.pdf("wall", Instant.EPOCH, List.of(wall), Words.english()::say);
    try (PDDocument pdf = Loader.loadPDF(bytes(file))) {
      float units = pdf.getPage(0).getMediaBox().getHeight();
      assertThat(units).isLessThanOrEqualTo(14_400f);
      double mm = units * pdf.getPage(0).getUserUnit() * 25.4 / 72;
      assertThat(mm).isCloseTo(9000, within(0.01));
    }
  }

  @Test
  void the_proof_page_says_what_is_weeded_what_is_kept_and_what_to_measure() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(bytes(BUNDLE.proofPdf()))) {
      assertThat(new PDFTextStripper().getText(pdf))
          .contains("Weed exactly what is shaded; ringed pieces stay.")
          .contains("release 2")
          .contains("Finished size")
          .contains("Check with a ruler")
          .contains("Never mirror these files");
    }
  }

  @Test
  void no_file_says_that_what_lines_enclose_is_weeded() throws IOException {
    for (Map.Entry<String, byte[]> file : unzip(zip()).entrySet()) {
      if (!file.getKey().endsWith(".pdf")) {
        assertThat(new String(file.getValue(), StandardCharsets.UTF_8))
            .as(file.getKey())
            .contains("eed exactly what the proof shows shaded; ringed pieces stay.")
            .doesNotContain("enclose");
      }
    }
  }

  @Test
  void a_piece_that_a_seam_divides_is_ringed_in_both_its_panels() {
    StencilSet set = Graphics.one(Graphics.squareRing());
    SeamPlanner planner = new SeamPlanner(set, PanelParameters.usual());
    PanelPlan one = planner.best();
    assertThat(StayingPieces.of(set, one).of(set.stencils().get(0))).hasSize(1);
    PanelPlan two = planner.at(StripDirection.DOWN, List.of(set.blank().width() / 2));
    List<Region> pieces = StayingPieces.of(set, two).of(set.stencils().get(0));
    assertThat(pieces).hasSize(2);
    assertThat(pieces.get(0).area()).isCloseTo((100 + 12.7) * 200, within(1e-6));
    assertThat(pieces.get(1).area()).isCloseTo(100 * 200, within(1e-6));
  }

  @Test
  void no_two_words_of_the_proof_page_lie_on_each_other() {
    clear(
        new ProofPage(
                BUNDLE.job(),
                SET,
                SET.stencils().get(0),
                PLAN,
                StayingPieces.of(SET, PLAN).of(SET.stencils().get(0)),
                UnitSystem.FEET_INCHES,
                Words.english()::say)
            .drawing());
  }

  @Test
  void a_proof_page_of_many_panels_keeps_every_word_on_the_paper() {
    StencilSet wide = Graphics.one(Graphics.letterF(9000));
    PanelParameters rules =
        PanelParameters.usual().withRoll(Roll.ofWidth(624).withLongestPiece(3000)).withPitch(50);
    PanelPlan plan = new SeamPlanner(wide, rules).best(StripDirection.DOWN);
    CutFileParameters job =
        new CutFileParameters("A name so long that no page could ever hold it ".repeat(4), 12);
    Stencil f = wide.stencils().get(0);
    List<Region> staying = StayingPieces.of(wide, plan).of(f);
    Drawing page =
        new ProofPage(job, wide, f, plan, staying, UnitSystem.METRIC, Words.english()::say)
            .drawing();
    clear(page);
    for (TextBox box : TextBox.of(page)) {
      assertThat(box.bounds().maxX()).as(box.words()).isLessThan(200);
      assertThat(box.bounds().maxY()).as(box.words()).isLessThan(290);
    }
  }

  private static void clear(Drawing page) {
    List<TextBox> boxes = TextBox.of(page);
    for (int i = 0; i < boxes.size(); i++) {
      for (int j = 0; j < i; j++) {
        assertThat(boxes.get(i).overlaps(boxes.get(j)))
            .as("%s on %s", boxes.get(i).words(), boxes.get(j).words())
            .isFalse();
      }
    }
  }

  private static Region ringBeside() {
    return Graphics.squareRing().map(Affine.move(1300, 200));
  }

  private static byte[] zip() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    BUNDLE.write(out);
    return out.toByteArray();
  }

  private static byte[] bytes(PdfFile file) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    file.write(out);
    return out.toByteArray();
  }

  private static Map<String, byte[]> unzip(byte[] bytes) throws IOException {
    Map<String, byte[]> files = new LinkedHashMap<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(bytes))) {
      for (ZipEntry e = in.getNextEntry(); e != null; e = in.getNextEntry()) {
        files.put(e.getName(), in.readAllBytes());
      }
    }
    return files;
  }
}
