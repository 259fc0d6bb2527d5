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
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.util.Matrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.inlay.stencil.DyeLayer;
import slabwright.inlay.stencil.Stencil;
import slabwright.inlay.stencil.StencilParameters;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.Bounds;
import slabwright.shape.FillRule;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.units.CieLab;

/** The whole graphic in its colors, where one color is a broad stroke and the other a clip. */
class PaintedProofTest {
  private static final Region HOOK = box(240, 300, 360, 1560).union(box(240, 1440, 1200, 1560));
  private static final List<Vec> SAIL =
      List.of(new Vec(800, 300), new Vec(1900, 500), new Vec(1700, 1100), new Vec(800, 900));
  private static final List<Vec> WITHOUT_A_TIP =
      List.of(SAIL.get(0), new Vec(1790, 480), new Vec(1840, 680), SAIL.get(2), SAIL.get(3));
  private static final StencilSet SET =
      StencilSet.of(
          List.of(
              new DyeLayer("#14505c", 0, HOOK),
              new DyeLayer("#d8813c", 50, Region.of(List.of(new Ring(SAIL)), FillRule.NONZERO))),
          StencilParameters.usual());
  private static final float POINTS = (float) (72 / 25.4);
  private static final float PAGE = 3000;

  @TempDir Path folder;

  /** The blank where it lies in the frame that the graphic is drawn in. */
  private static Bounds blank() {
    Bounds in = SET.stencils().get(0).openings().bounds();
    double right = HOOK.bounds().minX() - in.minX();
    double down = HOOK.bounds().minY() - in.minY();
    Bounds b = SET.blank();
    return new Bounds(b.minX() + right, b.minY() + down, b.maxX() + right, b.maxY() + down);
  }

  private static List<ProofBatch.Wanted> wanted() {
    List<ProofBatch.Wanted> all = new ArrayList<>();
    for (Stencil s : SET.stencils()) {
      ProofPlan plan = ProofPlan.whole(s.openings(), SET.blank());
      all.add(new ProofBatch.Wanted(s.layer(), plan, Optional.of(CieLab.ofHex(s.colour()))));
    }
    return all;
  }

  private List<ProofBatch.Judged> judged(byte[] file, String name) throws IOException {
    Path path = Files.write(folder.resolve(name), file);
    List<ReturnedPage> pages = ReturnedFile.read(path).orThrow().pages();
    return ProofBatch.run(wanted(), pages, ShadingMeaning.PULLED_OUT, ProofLimits.USUAL);
  }

  private static List<String> faults(ProofBatch.Judged one) {
    return one.report().faults().stream().map(ProofFault::kind).toList();
  }

  private static void assertRight(List<ProofBatch.Judged> judged) {
    assertThat(judged).extracting(ProofBatch.Judged::stencil).containsExactly(1, 2);
    assertThat(judged)
        .allSatisfy(j -> assertThat(j.report().verdict()).isEqualTo(ProofVerdict.CUT));
  }

  /** As a page of an SVG: the hook as a stroke so wide, the sail as a box cut by its outline. */
  private List<ProofBatch.Judged> svg(double stroke, List<Vec> sail, String pen)
      throws IOException {
    Bounds b = blank();
    StringBuilder points = new StringBuilder();
    sail.forEach(p -> points.append(p.x()).append(',').append(p.y()).append(' '));
    String text =
        String.format(
            Locale.ROOT,
            "<svg xmlns='http://www.w3.org/2000/svg' width='3000mm' height='3000mm' viewBox='-400"
                + " -400 3000 3000'><defs><clipPath id='c'><polygon points='%s'/></clipPath></defs>"
                + "<rect x='%f' y='%f' width='%f' height='%f' fill='#e8e4da'/>"
                + "<polyline points='300,300 300,1500 1200,1500' fill='none' stroke='#1a5560'"
                + " stroke-width='%f'/>"
                + "<rect x='700' y='200' width='1300' height='1000' fill='#d47f40'"
                + " clip-path='url(#c)'/>%s</svg>",
            points,
            b.minX(),
            b.minY(),
            b.width(),
            b.height(),
            stroke,
            pen);
    return judged(text.getBytes(StandardCharsets.UTF_8), "shown.svg");
  }

  @Test
  void strokes_count_as_their_areas_and_clips_cut() throws IOException {
    assertRight(svg(120, SAIL, ""));
  }

  @Test
  void a_stroke_that_is_too_broad_is_a_fault_of_its_color_alone() throws IOException {
    List<ProofBatch.Judged> judged = svg(126, SAIL, "");
    assertThat(faults(judged.get(0))).isNotEmpty();
    assertThat(faults(judged.get(1))).isEmpty();
  }

  @Test
  void a_clip_that_cuts_off_a_corner_is_a_piece_missing_in_its_color_alone() throws IOException {
    List<ProofBatch.Judged> judged = svg(120, WITHOUT_A_TIP, "");
    assertThat(faults(judged.get(0))).isEmpty();
    assertThat(faults(judged.get(1))).containsOnly("piece-missing");
  }

  @Test
  void a_pen_line_in_a_color_of_its_own_covers_nothing() throws IOException {
    assertRight(
        svg(
            120,
            SAIL,
            "<path d='M200 600 H2000 M240 300 V1560' stroke='#111' stroke-width='0.4'/>"));
  }

  @Test
  void a_broad_line_in_a_color_of_its_own_hides_what_it_crosses() throws IOException {
    List<ProofBatch.Judged> judged =
        svg(120, SAIL, "<path d='M200 600 H2000' stroke='#111' stroke-width='30'/>");
    assertThat(judged).allSatisfy(j -> assertThat(faults(j)).isNotEmpty());
  }

  /** A right color proof of whole fills, and over it a hairline that crosses itself so often. */
  private ReturnedFiles scribbled(int corners) throws IOException {
    Bounds b = blank();
    StringBuilder sail = new StringBuilder("M");
    SAIL.forEach(p -> sail.append(p.x()).append(',').append(p.y()).append(' '));
    Random random = new Random(5);
    StringBuilder line = new StringBuilder("M");
    for (int i = 0; i < corners; i++) {
      line.append(random.nextInt(200)).append(',').append(random.nextInt(200)).append(' ');
    }
    String text =
        String.format(
            Locale.ROOT,
            "<svg xmlns='http://www.w3.org/2000/svg' width='3000mm' height='3000mm' viewBox='-400"
                + " -400 3000 3000'>"
                + "<rect x='%f' y='%f' width='%f' height='%f' fill='#e8e4da'/>"
                + "<path d='M240 300h120v1140h840v120h-960z' fill='#1a5560'/>"
                + "<path d='%sz' fill='#d47f40'/>"
                + "<path d='%s' transform='translate(-390 2300)' fill='none' stroke='#d47f40'"
                + " stroke-width='0.01'/></svg>",
            b.minX(),
            b.minY(),
            b.width(),
            b.height(),
            sail,
            line);
    Path path = Files.writeString(folder.resolve("scribbled.svg"), text);
    return ReturnedFiles.read(List.of(path), OptionalInt.empty()).orThrow();
  }

  @Test
  void strokes_that_cross_too_often_leave_the_fills_to_judge_and_a_doubt() throws IOException {
    ReturnedFiles came = scribbled(1200);
    List<ProofBatch.Judged> judged =
        ProofBatch.run(wanted(), came, ShadingMeaning.PULLED_OUT, ProofLimits.USUAL);
    assertThat(judged).allSatisfy(j -> assertThat(faults(j)).isEmpty());
    assertThat(judged.get(0).report().notes()).extracting(ProofNote::kind).contains("paint-unread");
    assertThat(judged.get(0).report().verdict()).isEqualTo(ProofVerdict.CANNOT_TELL);
  }

  private static float pt(double mm) {
    return (float) (mm * POINTS);
  }

  /** The same as a page of a PDF, perhaps one that is shown turned. */
  private List<ProofBatch.Judged> pdf(double stroke, List<Vec> sail, int turned)
      throws IOException {
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage(new PDRectangle(PAGE * POINTS, PAGE * POINTS));
      page.setRotation(turned);
      document.addPage(page);
      try (PDPageContentStream c = new PDPageContentStream(document, page)) {
        c.transform(new Matrix(1, 0, 0, -1, pt(400), pt(2600)));
        Bounds b = blank();
        c.setNonStrokingColor(0xe8 / 255f, 0xe4 / 255f, 0xda / 255f);
        c.addRect(pt(b.minX()), pt(b.minY()), pt(b.width()), pt(b.height()));
        c.fill();
        c.setStrokingColor(0x1a / 255f, 0x55 / 255f, 0x60 / 255f);
        c.setLineWidth(pt(stroke));
        c.moveTo(pt(300), pt(300));
        c.lineTo(pt(300), pt(1500));
        c.lineTo(pt(1200), pt(1500));
        c.stroke();
        c.saveGraphicsState();
        c.moveTo(pt(sail.get(0).x()), pt(sail.get(0).y()));
        for (Vec p : sail.subList(1, sail.size())) {
          c.lineTo(pt(p.x()), pt(p.y()));
        }
        c.closePath();
        c.clip();
        c.setNonStrokingColor(0xd4 / 255f, 0x7f / 255f, 0x40 / 255f);
        c.addRect(pt(700), pt(200), pt(1300), pt(1000));
        c.fill();
        c.restoreGraphicsState();
      }
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return judged(out.toByteArray(), "shown.pdf");
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 90, 180, 270})
  void strokes_and_clips_of_a_pdf_are_seen_however_its_page_is_turned(int turned)
      throws IOException {
    assertRight(pdf(120, SAIL, turned));
  }

  @Test
  void a_fault_in_a_stroke_or_a_clip_of_a_pdf_is_one_of_its_color() throws IOException {
    List<ProofBatch.Judged> broad = pdf(126, SAIL, 0);
    assertThat(faults(broad.get(0))).isNotEmpty();
    assertThat(faults(broad.get(1))).isEmpty();
    List<ProofBatch.Judged> cutOff = pdf(120, WITHOUT_A_TIP, 90);
    assertThat(faults(cutOff.get(0))).isEmpty();
    assertThat(faults(cutOff.get(1))).containsOnly("piece-missing");
  }
}
