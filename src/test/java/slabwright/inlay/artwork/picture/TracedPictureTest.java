package slabwright.inlay.artwork.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.inlay.artwork.RefusedArtworkException;

/** A red bar on white paper, 120 by 60 pixels, traced as part of a drawing. */
class TracedPictureTest {
  private static BufferedImage bar(int type, int scale) {
    return bar(type, scale, Color.WHITE);
  }

  private static BufferedImage bar(int type, int scale, Color paper) {
    BufferedImage image = new BufferedImage(120 * scale, 60 * scale, type);
    Graphics2D g = image.createGraphics();
    if (type != BufferedImage.TYPE_INT_ARGB) {
      g.setColor(paper);
      g.fillRect(0, 0, image.getWidth(), image.getHeight());
    }
    g.setColor(new Color(0xb02030));
    g.fillRect(20 * scale, 10 * scale, 60 * scale, 30 * scale);
    g.dispose();
    return image;
  }

  private static TracedPicture traced(BufferedImage image) throws IOException {
    return TracedPicture.of(DrawnIcon.png(image));
  }

  private static void isBar(Path2D outline, int scale) {
    Rectangle2D box = new Area(outline).getBounds2D();
    assertThat(box.getMinX()).isCloseTo(20 * scale, within(0.3 * scale));
    assertThat(box.getMinY()).isCloseTo(10 * scale, within(0.3 * scale));
    assertThat(box.getMaxX()).isCloseTo(80 * scale, within(0.3 * scale));
    assertThat(box.getMaxY()).isCloseTo(40 * scale, within(0.3 * scale));
  }

  @Test
  void paper_is_the_first_area_and_lies_under_all_of_the_picture() throws IOException {
    TracedPicture picture = traced(bar(BufferedImage.TYPE_INT_RGB, 1));
    assertThat(picture.width()).isEqualTo(120);
    assertThat(picture.height()).isEqualTo(60);
    assertThat(picture.paper()).hasValue("#ffffff");
    assertThat(picture.areas())
        .extracting(TracedPicture.Area::hex)
        .containsExactly("#ffffff", "#b02030");
    assertThat(picture.areas().get(0).outline().getBounds2D())
        .isEqualTo(new Rectangle2D.Double(0, 0, 120, 60));
    isBar(picture.areas().get(1).outline(), 1);
    assertThat(picture.doubt()).isBetween(0.0, 1.0);
  }

  @Test
  void paper_is_what_lies_all_round_whatever_its_colour() throws IOException {
    TracedPicture picture = traced(bar(BufferedImage.TYPE_INT_RGB, 1, new Color(0xf0e4c0)));
    assertThat(picture.paper()).hasValue("#f0e4c0");
    assertThat(picture.areas())
        .extracting(TracedPicture.Area::hex)
        .containsExactly("#f0e4c0", "#b02030");
  }

  @Test
  void where_it_is_clear_nothing_lies_under_it() throws IOException {
    TracedPicture picture = traced(bar(BufferedImage.TYPE_INT_ARGB, 1));
    assertThat(picture.paper()).isEmpty();
    assertThat(picture.areas()).extracting(TracedPicture.Area::hex).containsExactly("#b02030");
    isBar(picture.areas().get(0).outline(), 1);
  }

  @Test
  void a_picture_that_two_colours_share_has_no_paper_and_a_clear_hole_is_a_hole()
      throws IOException {
    BufferedImage halves = new BufferedImage(120, 60, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = halves.createGraphics();
    g.setColor(new Color(0xf0e4c0));
    g.fillRect(0, 0, 60, 60);
    g.setColor(new Color(0xb02030));
    g.fillRect(60, 0, 60, 60);
    g.dispose();
    assertThat(traced(halves).paper()).isEmpty();
    assertThat(traced(halves).areas())
        .extracting(TracedPicture.Area::hex)
        .containsExactlyInAnyOrder("#f0e4c0", "#b02030");

    BufferedImage frame = new BufferedImage(120, 60, BufferedImage.TYPE_INT_ARGB);
    for (int i = 0; i < 120 * 60; i++) {
      boolean hole = i % 120 > 40 && i % 120 < 80 && i / 120 > 20 && i / 120 < 40;
      frame.setRGB(i % 120, i / 120, hole ? 0 : 0xffb02030);
    }
    assertThat(traced(frame).paper()).isEmpty();
    assertThat(traced(frame).areas())
        .singleElement()
        .satisfies(
            a -> {
              Path2D outline = a.outline();
              outline.setWindingRule(Path2D.WIND_EVEN_ODD);
              assertThat(outline.contains(20, 30)).isTrue();
              assertThat(outline.contains(60, 30)).isFalse();
            });
  }

  /** Thinned out before it is traced; told in its own pixels all the same. */
  @Test
  void a_large_picture_is_told_in_its_own_pixels() throws IOException {
    int scale = 42;
    TracedPicture picture = traced(bar(BufferedImage.TYPE_BYTE_BINARY, scale));
    assertThat(picture.width()).isCloseTo(120 * scale, within(8.0));
    assertThat(picture.height()).isCloseTo(60 * scale, within(8.0));
    List<TracedPicture.Area> areas = picture.areas();
    isBar(areas.get(areas.size() - 1).outline(), scale);
  }

  @Test
  void a_path_is_written_to_a_thousandth_with_its_moves_lines_and_ends() {
    Path2D path = new Path2D.Double();
    path.moveTo(1.23449, 2);
    path.lineTo(3, 4.00061);
    path.lineTo(5, -6);
    path.closePath();
    assertThat(new TracedPicture.Area(path, "#000000").pathData())
        .isEqualTo("M1.234 2.0L3.0 4.001L5.0 -6.0Z");
  }

  @Test
  void a_damaged_file_is_refused() {
    assertThatThrownBy(() -> TracedPicture.of(new byte[] {1, 2, 3}))
        .isInstanceOf(RefusedArtworkException.class);
  }
}
