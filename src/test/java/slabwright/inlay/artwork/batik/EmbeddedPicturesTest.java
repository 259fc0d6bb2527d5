package slabwright.inlay.artwork.batik;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.artwork.ArtworkQuestion;
import slabwright.inlay.artwork.ArtworkResult;
import slabwright.inlay.artwork.ArtworkWarning;
import slabwright.inlay.artwork.ColourRegion;
import slabwright.inlay.artwork.DrawnOutlines;

/** Pictures that an SVG carries: traced in their place, as far as they can be. */
class EmbeddedPicturesTest {
  private static final double DISC = Math.PI * 60 * 60;

  /** A blue disc of radius 60 in the middle of 200 by 200 pixels. */
  private static String disc(boolean seeThrough, String format) throws IOException {
    BufferedImage image =
        new BufferedImage(
            200, 200, seeThrough ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    if (!seeThrough) {
      g.setColor(Color.WHITE);
      g.fillRect(0, 0, 200, 200);
    }
    g.setColor(new Color(0x1e3c78));
    g.fill(new Ellipse2D.Double(40, 40, 120, 120));
    g.dispose();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, format, out);
    return "data:image/"
        + format
        + ";base64,"
        + Base64.getEncoder().encodeToString(out.toByteArray());
  }

  private static byte[] page(String body) {
    return ("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 400 300'>" + body + "</svg>")
        .getBytes(StandardCharsets.UTF_8);
  }

  private static Artwork read(String body) throws IOException {
    ArtworkResult result =
        SvgArtworkReader.read(
            new ByteArrayInputStream(page(body)), "sign.svg", ArtworkOptions.ofWidth(1000));
    return (Artwork) result;
  }

  /** In square units of the drawing. */
  private static double area(Artwork art, String hex) {
    return art.colours().stream()
            .filter(c -> c.hex().equals(hex))
            .mapToDouble(c -> c.region().area())
            .sum()
        / (art.mmPerPx() * art.mmPerPx());
  }

  @Test
  void a_picture_by_itself_is_traced_and_its_paper_stays_bare() throws IOException {
    Artwork art = read("<image width='100' height='100' href='" + disc(false, "png") + "'/>");
    assertThat(art.colours()).extracting(ColourRegion::hex).containsExactly("#1e3c78");
    assertThat(area(art, "#1e3c78")).isCloseTo(DISC / 4, within(DISC / 4 * 0.005));
    assertThat(art.questions()).isEmpty();
    assertThat(art.warnings())
        .extracting(ArtworkWarning::kind)
        .contains(ArtworkWarning.Kind.TRACED);
    // the disc is 60 units wide and fills the width
    assertThat(art.doubtMm().orElseThrow()).isBetween(0.1, 1000 / 120.0);
  }

  @Test
  void a_copy_that_is_drawn_larger_has_the_larger_doubt() throws IOException {
    String image = " href='" + disc(false, "png") + "'/>";
    double plain = read("<image width='200' height='200'" + image).doubtMm().orElseThrow();
    String kept = "<defs><g id='g'><image id='i' width='50' height='50'" + image + "</g></defs>";
    assertThat(read(kept + "<use href='#i' transform='scale(4)'/>").doubtMm().orElseThrow())
        .isCloseTo(plain, within(0.02 * plain));
    String twice =
        "<defs><g id='h' transform='scale(2)'><use href='#g' transform='scale(2)'/></g></defs>";
    assertThat(read(kept + twice + "<use href='#h'/>").doubtMm().orElseThrow())
        .isCloseTo(plain, within(0.02 * plain));
  }

  @Test
  void it_lies_where_transforms_and_its_own_box_put_it() throws IOException {
    String image =
        "<g transform='translate(200 0) scale(2)'><image x='10' y='20' width='80' height='40'"
            + " href='"
            + disc(false, "jpeg")
            + "'/></g><rect x='0' y='290' width='400' height='10' fill='#222222'/>";
    Artwork art = read(image);
    ColourRegion blue =
        art.colours().stream().filter(c -> !c.hex().equals("#222222")).findFirst().orElseThrow();
    // 200 pixels fit into 40 units, twice as large: the disc is 48 wide about (300, 80)
    double k = art.mmPerPx();
    assertThat(blue.region().bounds().width()).isCloseTo(48 * k, within(0.5));
    assertThat(blue.region().bounds().middle().x()).isCloseTo(300 * k, within(0.5));
    double down = 300 * k - (art.painted().maxY() - blue.region().bounds().middle().y());
    assertThat(down).isCloseTo(80 * k, within(0.5));
  }

  @Test
  void paper_over_other_paint_hides_it_and_is_asked_about() throws IOException {
    Artwork art =
        read(
            "<rect width='300' height='300' fill='#aa3333'/><image width='200' height='200' href='"
                + disc(false, "png")
                + "'/>");
    assertThat(area(art, "#aa3333")).isCloseTo(300 * 300 - 200 * 200, within(30.0));
    assertThat(art.questions())
        .extracting(ArtworkQuestion::kind)
        .containsExactly(ArtworkQuestion.Kind.WHITE);
  }

  @Test
  void what_is_see_through_shows_what_lies_below() throws IOException {
    Artwork art =
        read(
            "<rect width='300' height='300' fill='#aa3333'/><image width='200' height='200' href='"
                + disc(true, "png")
                + "'/>");
    assertThat(area(art, "#aa3333")).isCloseTo(300 * 300 - DISC, within(60.0));
    assertThat(art.questions()).isEmpty();
  }

  @Test
  void a_damaged_picture_beside_paths_is_left_out_with_a_note() throws IOException {
    Artwork art =
        read(
            "<image width='9' height='9' href='data:image/png;base64,iVBORw0KGgo='/>"
                + "<rect width='300' height='300' fill='#aa3333'/>");
    assertThat(art.colours()).hasSize(1);
    assertThat(art.warnings())
        .extracting(ArtworkWarning::kind)
        .containsExactly(ArtworkWarning.Kind.PART_LEFT_OUT);
  }

  /** What is proved by a picture is never surer of its edges than the picture is. */
  @Test
  void a_returned_drawing_that_holds_a_picture_has_its_doubt() throws IOException {
    String body = "<image width='400' height='300' href='" + disc(false, "png") + "'/>";
    DrawnOutlines drawn =
        (DrawnOutlines)
            SvgOutlinesReader.read(new ByteArrayInputStream(page(body)), "back.svg", List.of());
    DrawnOutlines plain =
        (DrawnOutlines)
            SvgOutlinesReader.read(
                new ByteArrayInputStream(page("<rect width='9' height='9'/>")), "a", List.of());
    // a pixel is 1.5 units of 0.26 mm
    assertThat(drawn.doubt() - plain.doubt()).isBetween(0.01, 0.4);
  }
}
