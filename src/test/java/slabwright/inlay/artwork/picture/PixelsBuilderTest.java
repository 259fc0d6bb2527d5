package slabwright.inlay.artwork.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.inlay.artwork.RefusedArtworkException;
import slabwright.shape.Vec;

/** Pixels of a few corners and colours, each worked out by hand. */
class PixelsBuilderTest {
  private static final Optional<String> WHITE = Optional.of("#ffffff");

  private static BufferedImage image(int w, int h, int... argb) {
    BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_ARGB);
    for (int i = 0; i < w * h; i++) {
      image.setRGB(i % w, i / w, argb[i % argb.length]);
    }
    return image;
  }

  private static Pixels flat(BufferedImage image, Optional<String> background) {
    return PixelsBuilder.of(image, background, List.of());
  }

  private static void near(int rgb, int r, int g, int b) {
    assertThat(PixelColour.red(rgb)).isCloseTo(r, within(1));
    assertThat(PixelColour.green(rgb)).isCloseTo(g, within(1));
    assertThat(PixelColour.blue(rgb)).isCloseTo(b, within(1));
  }

  @Test
  void solid_pixels_stay_as_they_are() {
    Pixels p = flat(image(2, 2, 0xff102030, 0xff405060, 0xff708090, 0xffa0b0c0), WHITE);
    assertThat(p.rgb()).containsExactly(0x102030, 0x405060, 0x708090, 0xa0b0c0);
    assertThat(p.thinned()).isEqualTo(1);
    assertThat(p.seeThrough()).isEqualTo(-1);
  }

  /** 0x80 of 255 over white or blue: 0.502 × colour + 0.498 × what is behind. */
  @Test
  void what_is_half_see_through_is_mixed_with_what_is_behind() {
    BufferedImage image = image(2, 2, 0x80c80000, 0xff102030);
    near(flat(image, WHITE).at(0, 0), 227, 127, 127);
    near(flat(image, Optional.of("#0000ff")).at(0, 0), 100, 0, 127);
    near(flat(image, Optional.of("#00ff00")).at(0, 1), 100, 127, 0);
    assertThat(flat(image, WHITE).at(1, 0)).isEqualTo(0x102030);
  }

  @Test
  void a_background_is_made_where_more_than_half_a_percent_is_clear_and_no_drawn_colour_is_near() {
    BufferedImage one = image(20, 10, 0xffffffff);
    one.setRGB(3, 4, 0x07ffffff);
    assertThat(flat(one, Optional.empty()).seeThrough()).isEqualTo(-1);
    one.setRGB(4, 4, 0x07ffffff);
    Pixels two = flat(one, Optional.empty());
    assertThat(two.seeThrough()).isNotEqualTo(0xffffff);
    for (int other : new int[] {0xffffff, 0x000000, 0xff00ff, 0x00ff00, 0x808080}) {
      assertThat(PixelColour.distance(0xffffff, two.seeThrough()))
          .isGreaterThanOrEqualTo(PixelColour.distance(0xffffff, other));
    }
    one.setRGB(3, 4, 0x08ffffff);
    assertThat(flat(one, Optional.empty()).seeThrough()).isEqualTo(-1);
  }

  @Test
  void of_the_backgrounds_the_one_is_taken_that_is_farthest_from_its_nearest_drawn_colour() {
    BufferedImage image = image(5, 2, 0xffffffff, 0xff000000, 0xff00ff00, 0xff808080, 0x00000000);
    assertThat(flat(image, Optional.empty()).seeThrough()).isEqualTo(0xff00ff);
    BufferedImage other = image(5, 2, 0xffffffff, 0xff000000, 0xffff00ff, 0xff808080, 0x00000000);
    assertThat(flat(other, Optional.empty()).seeThrough()).isEqualTo(0x00ff00);
  }

  /** 4,000 by 3,000 are enough; of one row more, four are brought together. */
  @Test
  void more_pixels_than_enough_are_brought_together_by_their_mean() {
    BufferedImage just = new BufferedImage(4_000, 3_000, BufferedImage.TYPE_INT_RGB);
    assertThat(flat(just, WHITE).thinned()).isEqualTo(1);
    BufferedImage more = new BufferedImage(4_002, 3_000, BufferedImage.TYPE_INT_RGB);
    more.setRGB(10, 20, 0x400000);
    more.setRGB(11, 20, 0x004000);
    more.setRGB(10, 21, 0x000040);
    more.setRGB(11, 21, 0x404040);
    Pixels p = flat(more, WHITE);
    assertThat(p.thinned()).isEqualTo(2);
    assertThat(p.width()).isEqualTo(2_001);
    assertThat(p.height()).isEqualTo(1_500);
    assertThat(p.at(5, 10)).isEqualTo(0x202020);
    assertThat(p.at(4, 10)).isZero();
    assertThat(p.at(6, 10)).isZero();
    assertThat(p.at(5, 11)).isZero();
  }

  private static List<Vec> square(double x0, double y0, double x1, double y1) {
    return List.of(new Vec(x0, y0), new Vec(x1, y0), new Vec(x1, y1), new Vec(x0, y1));
  }

  /** Each pixel tells its place: 20 × x red, 20 × y green. */
  private static BufferedImage places() {
    BufferedImage image = new BufferedImage(12, 10, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < 10; y++) {
      for (int x = 0; x < 12; x++) {
        image.setRGB(x, y, ((20 * x) << 16) | ((20 * y) << 8) | 77);
      }
    }
    return image;
  }

  private static Pixels squared(List<Vec> corners) {
    return PixelsBuilder.of(places(), Optional.empty(), corners);
  }

  @Test
  void what_lies_between_four_corners_is_cut_out() {
    Pixels p = squared(square(2, 3, 8, 7));
    assertThat(p.width()).isEqualTo(6);
    assertThat(p.height()).isEqualTo(4);
    near(p.at(0, 0), 40, 60, 77);
    near(p.at(5, 0), 140, 60, 77);
    near(p.at(2, 3), 80, 120, 77);
    Pixels whole = squared(square(0, 0, 12, 10));
    near(whole.at(11, 9), 220, 180, 77);
  }

  /** A quarter of a pixel to the right and three quarters down. */
  @Test
  void between_pixels_their_colours_are_mixed() {
    Pixels p = squared(square(2.25, 3.75, 8.25, 7.75));
    near(p.at(0, 0), 45, 75, 77);
    near(p.at(3, 2), 105, 115, 77);
  }

  @Test
  void corners_from_the_top_right_turn_the_picture() {
    Pixels p = squared(List.of(new Vec(8, 3), new Vec(8, 7), new Vec(2, 7), new Vec(2, 3)));
    assertThat(p.width()).isEqualTo(4);
    assertThat(p.height()).isEqualTo(6);
    near(p.at(0, 0), 140, 60, 77);
    near(p.at(3, 0), 140, 120, 77);
    near(p.at(0, 5), 40, 60, 77);
  }

  @Test
  void sides_are_as_long_as_the_mean_of_both() {
    Pixels p = squared(List.of(new Vec(3, 1), new Vec(9, 1), new Vec(11, 9), new Vec(1, 9)));
    assertThat(p.width()).isEqualTo(8);
    assertThat(p.height()).isEqualTo((int) Math.rint(Math.hypot(2, 8)));
  }

  @Test
  void a_corner_outside_the_picture_and_a_sign_of_next_to_nothing_are_refused() {
    for (List<Vec> corners :
        List.of(
            square(-0.5, 3, 8, 7),
            square(2, -0.5, 8, 7),
            square(2, 3, 12.5, 7),
            square(2, 3, 8, 10.5),
            square(2, 3, 8, 4),
            square(2, 3, 3, 8))) {
      assertThatThrownBy(() -> squared(corners))
          .as("%s", corners)
          .isInstanceOf(RefusedArtworkException.class);
    }
    assertThatThrownBy(() -> flat(image(1, 5, 0xff000000), WHITE))
        .isInstanceOf(RefusedArtworkException.class);
    assertThatThrownBy(() -> flat(image(5, 1, 0xff000000), WHITE))
        .isInstanceOf(RefusedArtworkException.class);
  }
}
