package slabwright.drawing.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import slabwright.drawing.Drawing;
import slabwright.drawing.EncodedPicture;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Raster;
import slabwright.drawing.SampleDrawing;
import slabwright.drawing.Stroke;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;

class PaintersTest {
  private static final Instant MADE = Instant.parse("2026-11-25T00:00:00Z");

  private static byte[] pdf(Drawing... pages) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new PdfFile("Toy", MADE, List.of(pages)).write(out);
    return out.toByteArray();
  }

  @Test
  void the_same_drawing_gives_the_same_bytes_in_pdf_and_svg() throws IOException {
    assertThat(pdf(SampleDrawing.page())).isEqualTo(pdf(SampleDrawing.page()));
    assertThat(SvgPainter.write(SampleDrawing.page(), "Toy"))
        .isEqualTo(SvgPainter.write(SampleDrawing.page(), "Toy"));
  }

  @Test
  void words_in_a_pdf_are_real_and_their_font_is_embedded() throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf(SampleDrawing.page()))) {
      assertThat(new PDFTextStripper().getText(document)).contains("turned and large", "5.000 m");
      var resources = document.getPage(0).getResources();
      for (var name : resources.getFontNames()) {
        PDFont font = resources.getFont(name);
        assertThat(font.isEmbedded()).isTrue();
        assertThat(font.getName()).matches("[A-Z]{6}\\+DejaVuSans.*");
      }
    }
  }

  @Test
  void a_line_of_100_mm_measures_100_mm_in_a_pdf_and_in_a_picture() throws IOException {
    Drawing page =
        Drawing.paper(
            210,
            50,
            List.of(Stroke.line(Pen.of(1, Palette.INK), new Vec(20.32, 25), new Vec(120.32, 25))));
    double dots = 254; // ten to the millimetre
    assertThat(darkInRow(PicturePainter.picture(page, dots), 250)).isEqualTo(1000);
    try (PDDocument document = Loader.loadPDF(pdf(page))) {
      BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, (float) dots);
      assertThat(darkInRow(image, 250)).isBetween(999, 1001);
    }
  }

  @Test
  void a_picture_and_a_pdf_agree_dot_for_dot_but_for_edges() throws IOException {
    BufferedImage picture = PicturePainter.picture(SampleDrawing.page(), 50);
    try (PDDocument document = Loader.loadPDF(pdf(SampleDrawing.page()))) {
      BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 50);
      int apart = 0;
      int common = Math.min(picture.getHeight(), page.getHeight());
      int wide = Math.min(picture.getWidth(), page.getWidth());
      for (int y = 0; y < common; y++) {
        for (int x = 0; x < wide; x++) {
          apart += Math.abs(grey(picture, x, y) - grey(page, x, y)) > 110 ? 1 : 0;
        }
      }
      assertThat(apart).isLessThan(common * wide / 200);
    }
  }

  @Test
  void an_svg_states_its_size_in_millimetres_and_carries_its_font() {
    String svg = SvgPainter.write(SampleDrawing.page(), "A <toy>");
    assertThat(svg)
        .contains("width=\"210mm\" height=\"297mm\" viewBox=\"0 0 210 297\"")
        .contains("<title>A &lt;toy&gt;</title>")
        .contains("@font-face", ">5.000 m</text>")
        .doesNotContain("DOCTYPE");
  }

  /** Half red, half blue, 40 x 20 mm on a page. */
  private static Drawing pictured() {
    BufferedImage image = new BufferedImage(80, 40, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < 40; y++) {
      for (int x = 0; x < 80; x++) {
        image.setRGB(x, y, x < 40 ? 0xc02020 : 0x2020c0);
      }
    }
    Raster raster = new Raster(new Bounds(10, 10, 50, 30), EncodedPicture.of(image, 0.9f));
    return Drawing.paper(60, 40, List.of(raster));
  }

  private static boolean isReddish(int rgb) {
    return (rgb >> 16 & 255) > 150 && (rgb & 255) < 90;
  }

  @Test
  void a_picture_of_pixels_lies_upright_in_its_box_in_a_pdf_and_in_a_picture() throws IOException {
    BufferedImage png = PicturePainter.picture(pictured(), 254);
    try (PDDocument document = Loader.loadPDF(pdf(pictured()))) {
      BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 254);
      for (BufferedImage shown : List.of(png, page)) {
        assertThat(isReddish(shown.getRGB(120, 120))).isTrue();
        assertThat(isReddish(shown.getRGB(280, 280))).isTrue();
        assertThat(isReddish(shown.getRGB(320, 200))).isFalse();
        assertThat(shown.getRGB(320, 200) & 255).isGreaterThan(150);
        assertThat(shown.getRGB(60, 200) & 0xffffff).isEqualTo(0xffffff);
        assertThat(shown.getRGB(300, 350) & 0xffffff).isEqualTo(0xffffff);
      }
    }
  }

  @Test
  void a_picture_of_pixels_is_carried_in_the_svg_and_is_the_same_each_time() throws IOException {
    assertThat(SvgPainter.write(pictured(), "x"))
        .contains("<image x=\"10\" y=\"10\" width=\"40\" height=\"20\"")
        .contains("href=\"data:image/jpeg;base64,")
        .isEqualTo(SvgPainter.write(pictured(), "x"));
    assertThat(pdf(pictured())).isEqualTo(pdf(pictured()));
  }

  @Test
  void a_drawing_not_on_paper_cannot_be_painted() {
    assertThatThrownBy(() -> SvgPainter.write(SampleDrawing.site(), "Toy"))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("place the drawing");
  }

  @Test
  void numbers_have_a_point_and_at_most_three_decimals() {
    assertThat(List.of(-0.0004, 1.5, -2.25, 3.1416, 1000.0, -0.05))
        .extracting(SvgPainter::number)
        .containsExactly("0", "1.5", "-2.25", "3.142", "1000", "-0.05");
  }

  private static int darkInRow(BufferedImage image, int row) {
    int dark = 0;
    for (int x = 0; x < image.getWidth(); x++) {
      dark += grey(image, x, row) < 128 ? 1 : 0;
    }
    return dark;
  }

  private static int grey(BufferedImage image, int x, int y) {
    int rgb = image.getRGB(x, y);
    return ((rgb >> 16 & 255) + (rgb >> 8 & 255) + (rgb & 255)) / 3;
  }
}
