package slabwright.inlay.artwork.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.artwork.ColourRegion;
import slabwright.shape.Vec;

/** Against the PDF library's own picture of the page, which shares the parser and nothing else. */
class PdfRenderedTest {
  private static final int PX = 900;
  private static final double WIDTH = 900;

  private static final String DRAWING =
      // a corner in each corner, so that what is painted fills the page
      "0.2 0.3 0.6 rg 0 0 12 12 re 288 288 12 12 re f "
          + "0.8 0.2 0.2 rg 60 60 m 240 260 l 20 180 l 280 180 l 60 260 l h f* "
          + "q 150 150 m 250 150 l 200 280 l h W n 0.1 0.5 0.2 rg 100 100 200 200 re f Q "
          + "0.9 0.7 0.1 RG 14 w 1 J [30 25] 4 d 30 30 m 120 120 250 -40 270 150 c S "
          + "q 0.5 0.3 -0.3 0.5 40 220 cm /F Do Q "
          + "0 0.2 1 0.1 k BT /T 60 Tf 0.9 0.1 -0.1 1 90 40 Tm <00240026> Tj ET "
          + "BT 1 Tr 3 w [] 0 d 0.3 0.3 0.3 RG /T 60 Tf 200 60 Td <0025> Tj ET";

  @Test
  void every_point_away_from_an_edge_has_the_colour_that_a_renderer_paints() throws IOException {
    byte[] pdf =
        PdfFile.of(
            DRAWING,
            (document, page) -> {
              PDFormXObject form =
                  new PDFormXObject(PdfFile.stream(document, "0.5 0 0.5 rg 0 0 80 60 re f"));
              form.setBBox(new PDRectangle(10, 0, 100, 50));
              page.getResources().put(COSName.getPDFName("F"), form);
              letters(document, page);
            });
    Artwork art =
        (Artwork) PdfArtworkReader.read(pdf, "page.pdf", 1, ArtworkOptions.ofWidth(WIDTH));
    BufferedImage picture = rendered(pdf);
    int compared = 0;
    for (int x = 4; x < PX - 4; x += 7) {
      for (int y = 4; y < PX - 4; y += 7) {
        if (isFlat(picture, x, y)) {
          compared++;
          assertThat(colour(art, new Vec(x + 0.5, y + 0.5)))
              .as("at %d, %d", x, y)
              .isEqualTo("#%06x".formatted(picture.getRGB(x, y) & 0xffffff));
        }
      }
    }
    assertThat(compared).isGreaterThan(10_000);
  }

  private static void letters(PDDocument document, PDPage page) throws IOException {
    try (InputStream font = PdfRenderedTest.class.getResourceAsStream("/fonts/DejaVuSans.ttf")) {
      page.getResources().put(COSName.getPDFName("T"), PDType0Font.load(document, font, false));
    }
  }

  private static BufferedImage rendered(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFRenderer(document).renderImage(0, PX / 300f);
    }
  }

  private static boolean isFlat(BufferedImage picture, int x, int y) {
    for (int i = -2; i <= 2; i++) {
      for (int j = -2; j <= 2; j++) {
        if (picture.getRGB(x + i, y + j) != picture.getRGB(x, y)) {
          return false;
        }
      }
    }
    return true;
  }

  private static String colour(Artwork art, Vec at) {
    Optional<ColourRegion> seen =
        art.colours().stream().filter(c -> c.region().contains(at)).findFirst();
    return seen.map(ColourRegion::hex).orElse("#ffffff");
  }
}
