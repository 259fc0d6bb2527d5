package slabwright.sheets.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import slabwright.drawing.Drawing;
import slabwright.shape.Vec;
import slabwright.sheets.SheetSamples;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

class TrueScaleTest {
  /** ISO 216; ANSI/ASME Y14.1 (A, B); ARCH series as in drafting tables. Inches times 25.4. */
  @ParameterizedTest
  @CsvSource({
    "A4, 297, 210",
    "A3, 420, 297",
    "A1, 841, 594",
    "Letter, 279.4, 215.9",
    "Tabloid, 431.8, 279.4",
    "ARCH C, 609.6, 457.2",
    "arch-d, 914.4, 609.6"
  })
  void papers_have_their_published_sizes(String name, double width, double height) {
    PaperSize paper = PaperSize.named(name).orElseThrow();
    assertThat(paper.width()).isCloseTo(width, within(1e-9));
    assertThat(paper.height()).isCloseTo(height, within(1e-9));
  }

  /** Scale factor = 12 over the inches to the foot, as drafting tables list it. */
  @ParameterizedTest
  @CsvSource({
    "1/16, 192",
    "3/32, 128",
    "1/8, 96",
    "3/16, 64",
    "1/4, 48",
    "3/8, 32",
    "1/2, 24",
    "3/4, 16",
    "1, 12",
    "1 1/2, 8",
    "3, 4"
  })
  void scales_to_the_foot_have_their_published_factors(String inches, double factor) {
    assertThat(StandardScales.of(UnitSystem.FEET_INCHES))
        .anySatisfy(
            s -> {
              assertThat(Words.english().say(s.name())).isEqualTo(inches + "″ = 1′ 0″");
              assertThat(s.denominator()).isCloseTo(factor, within(1e-9));
            });
  }

  @Test
  void the_largest_standard_scale_that_fits_is_chosen() {
    assertThat(fit(10_000, 8_000, 200, 200, UnitSystem.METRIC)).isEqualTo("1:50");
    assertThat(fit(10_001, 8_000, 200, 200, UnitSystem.METRIC)).isEqualTo("1:75");
    // 60 ft at 1/4 in to the foot is 15 in
    double foot = 304.8;
    assertThat(fit(60 * foot, foot, 15 * 25.4, 500, UnitSystem.FEET_INCHES))
        .isEqualTo("1/4″ = 1′ 0″");
    assertThat(fit(61 * foot, foot, 15 * 25.4, 500, UnitSystem.FEET_INCHES))
        .isEqualTo("3/16″ = 1′ 0″");
  }

  @Test
  void what_does_not_fit_at_the_smallest_working_scale_is_still_drawn_at_it() {
    assertThat(fit(90_000, 9_000, 200, 200, UnitSystem.METRIC)).isEqualTo("1:100");
    assertThat(fit(90_000, 9_000, 200, 200, UnitSystem.FEET_INCHES)).isEqualTo("1/8″ = 1′ 0″");
  }

  private static String fit(double w, double h, double rw, double rh, UnitSystem units) {
    return Words.english().say(StandardScales.fitting(w, h, rw, rh, units).name());
  }

  @ParameterizedTest
  @EnumSource(PaperSize.class)
  void the_check_line_measures_true_in_a_rendered_page(PaperSize paper) throws IOException {
    Drawing page =
        Drawing.paper(
            paper.width(),
            60,
            CheckLine.at(
                new Vec(30, 40),
                new SheetContext(PageFrame.of(paper), UnitSystem.METRIC, Words.english())));
    double length = paper.inches() ? 101.6 : 100;
    try (PDDocument document = Loader.loadPDF(pdf(paper, page))) {
      BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, 254f);
      int row = 400;
      int dark = 0;
      for (int x = 0; x < image.getWidth(); x++) {
        dark += (image.getRGB(x, row) & 255) < 128 ? 1 : 0;
      }
      assertThat(dark / 10.0).isCloseTo(length, within(0.3));
    }
  }

  private static byte[] pdf(PaperSize paper, Drawing page) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SheetFiles.pdf(List.of(new PrintedPage("p", "p", "", paper, page)), "t", SheetSamples.DAY, out);
    return out.toByteArray();
  }
}
