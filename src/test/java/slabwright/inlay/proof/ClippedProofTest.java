package slabwright.inlay.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static slabwright.inlay.Graphics.box;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.util.Matrix;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slabwright.shape.Bounds;

/** One stencil, drawn inside a clip: what the clip hides is not there. */
class ClippedProofTest {
  private static final float POINTS = (float) (72 / 25.4);
  private static final Bounds BLANK = new Bounds(0, 0, 2000, 1400);
  private static final Bounds TALL = new Bounds(300, 300, 700, 1000);
  private static final Bounds FLAT = new Bounds(900, 600, 1700, 900);
  private static final Bounds STRAY = new Bounds(1000, 200, 1300, 400);
  private static final ProofPlan PLAN =
      ProofPlan.whole(
          box(300, 300, 700, 1000).union(box(900, 600, 1700, 900)), new Bounds(0, 0, 2000, 1400));

  /** Hides the stray opening and nothing else. */
  private static final List<Bounds> BELOW =
      List.of(new Bounds(-50, -50, 800, 1450), new Bounds(800, 500, 2050, 1450));

  /** What the returned drawing is, and how its openings are drawn. */
  private enum File {
    SVG_FILLS(true, true),
    SVG_LINES(true, false),
    PDF_FILLS(false, true),
    PDF_LINES(false, false);

    private final boolean svg;
    private final boolean filled;

    File(boolean svg, boolean filled) {
      this.svg = svg;
      this.filled = filled;
    }
  }

  @TempDir Path folder;

  private ProofReport judged(File file, List<Bounds> openings, List<Bounds> clip)
      throws IOException {
    return judged(file, openings, clip, 2100);
  }

  private ProofReport judged(File file, List<Bounds> openings, List<Bounds> clip, int wide)
      throws IOException {
    byte[] bytes = file.svg ? svg(file, openings, clip, wide) : pdf(file, openings, clip, wide);
    Path path = Files.write(folder.resolve("shown"), bytes);
    List<ReturnedPage> pages = ReturnedFile.read(path).orThrow().pages();
    List<ProofBatch.Wanted> wanted = List.of(new ProofBatch.Wanted(1, PLAN));
    return ProofBatch.run(wanted, pages, ShadingMeaning.PULLED_OUT, ProofLimits.USUAL)
        .get(0)
        .report();
  }

  /** Bare lines don't say what is pulled out. */
  private static void assertRight(File file, ProofReport report) {
    assertThat(faults(report)).isEmpty();
    assertThat(report.verdict())
        .isEqualTo(file.filled ? ProofVerdict.CUT : ProofVerdict.CANNOT_TELL);
  }

  private static List<String> faults(ProofReport report) {
    return report.faults().stream().map(ProofFault::kind).toList();
  }

  private static byte[] svg(File file, List<Bounds> openings, List<Bounds> clip, int wide) {
    String paint = file.filled ? "fill='#222'" : "fill='none' stroke='#222' stroke-width='0.2'";
    StringBuilder text = new StringBuilder();
    text.append("<svg xmlns='http://www.w3.org/2000/svg' width='" + wide + "mm' height='1500mm'")
        .append(" viewBox='-50 -50 " + wide + " 1500'><clipPath id='c'>");
    clip.forEach(b -> text.append(rect(b, "")));
    text.append("</clipPath>").append(rect(BLANK, "fill='none' stroke='#222' stroke-width='0.2'"));
    text.append("<g").append(clip.isEmpty() ? "" : " clip-path='url(#c)'").append('>');
    openings.forEach(b -> text.append(rect(b, paint)));
    return text.append("</g></svg>").toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String rect(Bounds b, String how) {
    return String.format(
        Locale.ROOT,
        "<rect x='%f' y='%f' width='%f' height='%f' %s/>",
        b.minX(),
        b.minY(),
        b.width(),
        b.height(),
        how);
  }

  private static byte[] pdf(File file, List<Bounds> openings, List<Bounds> clip, int wide)
      throws IOException {
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage(new PDRectangle(wide * POINTS, 1500 * POINTS));
      document.addPage(page);
      try (PDPageContentStream c = new PDPageContentStream(document, page)) {
        c.transform(new Matrix(1, 0, 0, -1, 50 * POINTS, 1450 * POINTS));
        c.setLineWidth(0.2f);
        rect(c, BLANK);
        c.stroke();
        c.saveGraphicsState();
        for (Bounds b : clip) {
          rect(c, b);
        }
        if (!clip.isEmpty()) {
          c.clip();
        }
        for (Bounds b : openings) {
          rect(c, b);
          if (file.filled) {
            c.fill();
          } else {
            c.stroke();
          }
        }
        c.restoreGraphicsState();
      }
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return out.toByteArray();
    }
  }

  private static void rect(PDPageContentStream c, Bounds b) throws IOException {
    c.addRect(
        (float) (b.minX() * POINTS),
        (float) (b.minY() * POINTS),
        (float) (b.width() * POINTS),
        (float) (b.height() * POINTS));
  }

  @ParameterizedTest
  @EnumSource
  void a_piece_that_the_clip_hides_is_no_opening(File file) throws IOException {
    List<Bounds> openings = List.of(TALL, FLAT, STRAY);
    assertThat(faults(judged(file, openings, List.of()))).contains("piece-added");
    assertRight(file, judged(file, openings, BELOW));
  }

  @ParameterizedTest
  @EnumSource
  void an_opening_that_the_clip_cuts_in_half_is_told(File file) throws IOException {
    for (double right : new double[] {1300, 1690}) {
      ProofReport cut =
          judged(file, List.of(TALL, FLAT), List.of(new Bounds(-50, -50, right, 1450)));
      assertThat(faults(cut)).isNotEmpty();
      assertThat(cut.verdict()).isEqualTo(ProofVerdict.DO_NOT_CUT);
    }
  }

  @ParameterizedTest
  @EnumSource
  void an_opening_that_the_clip_hides_is_missing(File file) throws IOException {
    ProofReport hidden = judged(file, List.of(TALL, FLAT), List.of(new Bounds(-9, -9, 800, 1450)));
    assertThat(faults(hidden)).contains("piece-missing");
  }

  @ParameterizedTest
  @EnumSource
  void a_clip_that_runs_along_the_openings_or_lies_around_them_hides_nothing(File file)
      throws IOException {
    List<Bounds> around = List.of(new Bounds(-50, -50, 2050, 1450));
    for (List<Bounds> clip : List.of(List.of(TALL, FLAT), List.of(BLANK), around)) {
      assertRight(file, judged(file, List.of(TALL, FLAT), clip));
    }
  }

  /** As before: a cutter's program takes what lies beyond the page too. */
  @ParameterizedTest
  @EnumSource
  void the_edge_of_the_page_hides_nothing(File file) throws IOException {
    assertRight(file, judged(file, List.of(TALL, FLAT), List.of(), 1500));
  }

  /** A box seen through a clip in the shape of the openings is those openings. */
  @ParameterizedTest
  @EnumSource(names = {"SVG_FILLS", "PDF_FILLS"})
  void a_box_behind_a_clip_is_what_the_clip_shows_of_it(File file) throws IOException {
    List<Bounds> box = new ArrayList<>(List.of(new Bounds(100, 100, 1900, 1300)));
    assertRight(file, judged(file, box, List.of(TALL, FLAT)));
  }
}
