package slabwright.inlay.artwork.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.Test;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.artwork.ArtworkWarning;
import slabwright.inlay.artwork.ColourRegion;
import slabwright.shape.Vec;

/** Pictures on a page of a PDF: traced in their place. */
class PdfPicturesTest {
  /** A bar along the top and the left of 90 by 60 pixels, so that no turn or mirror is missed. */
  private static BufferedImage corner() {
    BufferedImage image = new BufferedImage(90, 60, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, 90, 60);
    g.setColor(new Color(0x1e3c78));
    g.fillRect(10, 10, 70, 10);
    g.fillRect(10, 10, 10, 40);
    g.dispose();
    return image;
  }

  private static Artwork read(String operators) throws IOException {
    byte[] pdf =
        PdfFile.of(
            operators,
            (document, page) -> {
              PDImageXObject image = LosslessFactory.createFromImage(document, corner());
              page.getResources().put(COSName.getPDFName("Im"), image);
            });
    return (Artwork) PdfArtworkReader.read(pdf, "page.pdf", 1, ArtworkOptions.ofWidth(700));
  }

  @Test
  void a_picture_by_itself_is_traced_upright_and_its_paper_stays_bare() throws IOException {
    Artwork art = read("q 180 0 0 120 40 50 cm /Im Do Q");
    assertThat(art.colours()).extracting(ColourRegion::hex).containsExactly("#1e3c78");
    // 70 pixels of 10 mm: the bar lies along the top, its leg goes down at the left
    ColourRegion blue = art.colours().get(0);
    assertThat(blue.region().area()).isCloseTo((70 + 30) * 10 * 100, within(600.0));
    assertThat(blue.region().contains(new Vec(650, 50))).isTrue();
    assertThat(blue.region().contains(new Vec(50, 350))).isTrue();
    assertThat(art.doubtMm().orElseThrow()).isBetween(0.1, 10.0);
    assertThat(art.warnings())
        .extracting(ArtworkWarning::kind)
        .containsExactly(ArtworkWarning.Kind.TRACED);
  }

  @Test
  void it_is_cut_by_clips_and_lies_on_what_is_below() throws IOException {
    Artwork art =
        read("0.8 0.2 0.2 rg 0 0 300 300 re f q 40 50 90 120 re W n 180 0 0 120 40 50 cm /Im Do Q");
    double k = art.mmPerPx() * 96 / 72; // mm a point
    double white =
        art.colours().stream()
            .filter(c -> c.hex().equals("#ffffff"))
            .mapToDouble(c -> c.region().area())
            .sum();
    // half of the picture is seen; 35 by 10 and 10 by 30 pixels of it are blue, 4 square points
    // each
    assertThat(white / (k * k)).isCloseTo(90 * 120 - 4 * (350 + 300), within(40.0));
  }
}
