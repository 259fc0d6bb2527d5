package slabwright.inlay.artwork.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.artwork.ColourRegion;
import slabwright.shape.Region;

/** Icons of our own drawn as pictures and traced back. */
class TracedIconTest {
  private static Artwork traced(byte[] file) throws IOException {
    return (Artwork)
        PictureArtworkReader.read(
            new ByteArrayInputStream(file),
            "icon",
            ArtworkOptions.ofWidth(TracedIcon.JUDGED_MM),
            TraceSettings.TOLD);
  }

  @ParameterizedTest
  @CsvSource({
    "star,200,png",
    "star,200,jpeg",
    "burst,200,jpeg",
    "letters,200,jpeg",
    "two-halves,200,jpeg",
    "thin-ring,200,png",
    "grey-between,200,png",
    "leaf,200,jpeg",
    "heron,200,jpeg"
  })
  void an_icon_comes_back_at_most_half_as_far_off_as_a_plain_contour(
      String name, int side, String kind) throws IOException {
    TracedIcon t = TracedIcon.of(DrawnIcon.named(name), side, kind);
    assertThat(t.ratio()).as(t.row()).isLessThanOrEqualTo(0.5);
    assertThat(t.ours().p95()).as(t.row()).isLessThanOrEqualTo(t.doubt());
  }

  @ParameterizedTest
  @CsvSource({"heron,400,1.2", "letters,400,1.2", "two-halves,800,0.6"})
  void edges_from_a_jpeg_are_no_further_off_than_was_tried_out(String name, int side, double mm)
      throws IOException {
    assertThat(TracedIcon.of(DrawnIcon.named(name), side, "jpeg").p95Mm()).isLessThanOrEqualTo(mm);
  }

  /** Area of a circle, π r². */
  @Test
  void a_disc_of_160_pixels_has_its_area_to_a_thousandth() throws IOException {
    Artwork disc = traced(DrawnIcon.png(DrawnIcon.named("disc").drawn(200)));
    double r = TracedIcon.JUDGED_MM / 2;
    assertThat(disc.colours().get(0).region().area())
        .isCloseTo(Math.PI * r * r, within(Math.PI * r * r / 1000));
    assertThat(disc.mmPerPx()).isCloseTo(TracedIcon.JUDGED_MM / 160, within(0.01));
  }

  @Test
  void a_square_set_aslant_keeps_its_four_sharp_corners() throws IOException {
    Pixels p = DrawnIcon.pixels(DrawnIcon.png(DrawnIcon.named("turned-square").drawn(200)));
    int[] palette = {0xffffff, 0x1d1d1b};
    PictureTrace trace = new PictureTrace(p, PixelLabeller.label(p, palette), 0);
    Path2D outline = new RingAssembly(trace).outlines(2).get(1);
    Region square = TraceScore.region(outline, 1);
    assertThat(square.rings()).hasSize(1);
    assertThat(square.rings().get(0).points()).hasSize(4);
    assertThat(square.area()).isCloseTo(100 * 100, within(5.0));
  }

  @Test
  void neighbours_share_their_border_and_leave_no_crumb_between_them() throws IOException {
    BufferedImage image = DrawnIcon.named("two-halves").drawn(400);
    Artwork art = traced(DrawnIcon.jpeg(image, 0.75));
    List<ColourRegion> halves = art.colours();
    assertThat(halves).hasSize(2);
    Region a = halves.get(0).region();
    Region b = halves.get(1).region();
    assertThat(a.intersect(b).area()).isZero();
    Region both = a.union(b);
    assertThat(both.rings()).as("one disc with one hole").hasSize(2);
    assertThat(both.area()).isCloseTo(a.area() + b.area(), within(1e-3));
  }
}
