package slabwright.pdfin.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;
import slabwright.shape.fit.Homography;
import slabwright.units.Result;
import slabwright.words.Words;

/** A floor of 1 m tiles photographed by sum, laid flat again. */
class RectifiedPhotoTest {
  /** The rectangle 4 m × 3 m as a camera at its near side sees it. */
  private static final List<Vec> SEEN =
      List.of(new Vec(100, 580), new Vec(700, 590), new Vec(560, 260), new Vec(230, 250));

  private static final List<Vec> FLOOR =
      List.of(Vec.ZERO, new Vec(4000, 0), new Vec(4000, 3000), new Vec(0, 3000));

  private static final Homography TO_PHOTO = Homography.of(FLOOR, SEEN).orElseThrow();

  /** Dark and light tiles, and a red spot of 60 mm about (2500, 1500). */
  static Picture photo() {
    BufferedImage image = new BufferedImage(800, 600, BufferedImage.TYPE_INT_RGB);
    Homography toFloor = TO_PHOTO.inverse();
    for (int y = 0; y < 600; y++) {
      for (int x = 0; x < 800; x++) {
        Vec pixel = new Vec(x + 0.5, y + 0.5);
        boolean floor = TO_PHOTO.depth(toFloor.apply(pixel)) > 0 && y > 150;
        image.setRGB(x, y, floor ? colour(toFloor.apply(pixel)) : 0x88AACC);
      }
    }
    return new Picture(image);
  }

  private static int colour(Vec p) {
    if (p.distanceTo(new Vec(2500, 1500)) < 60) {
      return 0xFF0000;
    }
    long tile = (long) Math.floor(p.x() / 1000) + (long) Math.floor(p.y() / 1000);
    return (tile & 1) == 0 ? 0x303030 : 0xD0D0D0;
  }

  static RectifiedPhoto flat() {
    return RectifiedPhoto.of(photo(), SEEN, 4000, 3000).orThrow();
  }

  private static int seenAt(RectifiedPhoto flat, double x, double y) {
    Vec pixel = flat.placing().inverse().apply(new Vec(x, y));
    return flat.picture().image().getRGB((int) pixel.x(), (int) pixel.y());
  }

  @Test
  void a_spot_on_the_floor_comes_to_its_place() {
    RectifiedPhoto flat = flat();
    assertThat(seenAt(flat, 2500, 1500)).isEqualTo(0xFFFF0000);
    assertThat(seenAt(flat, 2500, 1620)).isNotEqualTo(0xFFFF0000);
  }

  @Test
  void tiles_are_square_again_beyond_the_rectangle_too() {
    RectifiedPhoto flat = flat();
    for (int i = 0; i < 4; i++) {
      for (int j = 0; j < 4; j++) {
        int expected = ((i + j) & 1) == 0 ? 0xFF303030 : 0xFFD0D0D0;
        assertThat(seenAt(flat, 1000 * i + 250, 1000 * j + 250)).isEqualTo(expected);
      }
    }
  }

  @Test
  void what_the_photo_does_not_reach_is_clear() {
    assertThat(seenAt(flat(), -2500, -2500) >>> 24).isZero();
  }

  @Test
  void it_says_how_coarse_the_photo_is_and_what_it_cannot_show() {
    RectifiedPhoto flat = flat();
    Vec pixel = TO_PHOTO.apply(new Vec(0, 3000));
    Vec next = TO_PHOTO.inverse().apply(pixel.plus(new Vec(0, -1)));
    assertThat(flat.mmPerPixel()).isEqualTo(next.distanceTo(new Vec(0, 3000)), within(1.5));
    assertThat(Words.english().say(flat.caution()))
        .contains("flat on the floor")
        .contains("Check a length");
  }

  @Test
  void points_out_of_order_are_refused() {
    List<Vec> crossed = List.of(SEEN.get(0), SEEN.get(2), SEEN.get(1), SEEN.get(3));
    assertThat(
            Words.english()
                .say(
                    ((Result.Refused<RectifiedPhoto>)
                            RectifiedPhoto.of(photo(), crossed, 4000, 3000))
                        .message()))
        .contains("going round it");
    assertThat(RectifiedPhoto.of(photo(), SEEN, 0, 3000).isOk()).isFalse();
  }
}
