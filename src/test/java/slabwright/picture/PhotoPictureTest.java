package slabwright.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.Spot;
import slabwright.units.Length;

/** Photos are taken of our own scene with a camera whose every number is known. */
class PhotoPictureTest {
  private static final int WIDTH = 640;
  private static final int HEIGHT = 400;

  /** Known on the floor and in the photo, in no order that anyone walks. */
  private static final List<Vec> POINTS =
      List.of(new Vec(600, 1000), new Vec(3400, 3500), new Vec(3300, 900), new Vec(500, 3600));

  /** Where small dark plates lie that the photo does not show yet. */
  private static final List<Vec> PLATES =
      List.of(new Vec(2000, 2000), new Vec(1000, 2700), new Vec(3000, 3100), new Vec(2600, 1400));

  private static FloorScene bare() {
    return PictureSamples.scene(PictureSamples.room(List.of()));
  }

  private static FloorScene plated() {
    List<Mark> marks = new ArrayList<>();
    for (Vec p : PLATES) {
      Length side = Length.mm(160);
      Form form = new Form.Rectangle(Spot.of(p), side, side, Length.ZERO, 0);
      marks.add(Mark.of("p" + marks.size(), "plate", new MarkKind.DrainOrBox(), form));
    }
    return PictureSamples.scene(PictureSamples.room(marks));
  }

  private static DoorCamera camera() {
    return DoorCamera.of(bare(), Optional.empty(), WIDTH, HEIGHT);
  }

  private static BufferedImage photo() {
    return FloorRendering.fromDoor(bare(), WIDTH, HEIGHT).whole(() -> false);
  }

  private static List<Vec> inPhoto() {
    return POINTS.stream().map(camera().toPixels(0)::apply).toList();
  }

  private static FloorRendering on(BufferedImage photo, List<Vec> mask) {
    return FloorRendering.onPhoto(plated(), photo, POINTS, inPhoto(), mask).orElseThrow();
  }

  @Test
  void the_warp_puts_known_places_of_the_floor_within_a_thousandth_of_a_pixel() {
    FloorRendering r = on(photo(), List.of());
    for (double x = 200; x < 4000; x += 600) {
      for (double y = 800; y < 4000; y += 400) {
        Vec p = new Vec(x, y);
        assertThat(r.toPixels().apply(p).distanceTo(camera().toPixels(0).apply(p)))
            .isLessThan(1e-3);
      }
    }
  }

  @Test
  void a_new_thing_is_seen_within_a_pixel_of_where_the_camera_would_see_it() {
    BufferedImage before = photo();
    BufferedImage after = on(before, List.of()).whole(() -> false);
    for (Vec plate : PLATES) {
      Vec there = camera().toPixels(0).apply(plate);
      Vec sum = Vec.ZERO;
      double weight = 0;
      for (int y = (int) there.y() - 14; y <= there.y() + 14; y++) {
        for (int x = (int) there.x() - 20; x <= there.x() + 20; x++) {
          double darker = (before.getRGB(x, y) >> 8 & 255) - (after.getRGB(x, y) >> 8 & 255);
          if (darker > 40) {
            sum = sum.plus(new Vec(x + 0.5, y + 0.5).times(darker));
            weight += darker;
          }
        }
      }
      assertThat(weight).as("plate at %s", plate).isPositive();
      assertThat(sum.times(1 / weight).distanceTo(there)).as("at %s", plate).isLessThan(1);
    }
  }

  @Test
  void what_the_mask_leaves_out_stays_as_photographed() {
    BufferedImage before = photo();
    List<Vec> left =
        List.of(new Vec(0, 0), new Vec(300, 0), new Vec(300, HEIGHT), new Vec(0, HEIGHT));
    BufferedImage after = on(before, left).whole(() -> false);
    int changed = 0;
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        boolean same = before.getRGB(x, y) == after.getRGB(x, y);
        assertThat(same || x < 300).isTrue();
        changed += same ? 0 : 1;
      }
    }
    assertThat(changed).isPositive();
  }

  @Test
  void a_shadow_in_the_photo_lies_on_the_new_floor_too() {
    BufferedImage shaded = photo();
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH / 2; x++) {
        LinearColour c = light(shaded, x, y).times(0.4);
        shaded.setRGB(x, y, c.argb());
      }
    }
    BufferedImage after = on(shaded, List.of()).whole(() -> false);
    double dark = 0;
    double lit = 0;
    for (int y = HEIGHT - 40; y < HEIGHT - 10; y++) {
      for (int x = 100; x < 250; x++) {
        dark += light(after, x, y).luminance();
        lit += light(after, WIDTH - x, y).luminance();
      }
    }
    assertThat(dark / lit).isEqualTo(0.4, within(0.04));
  }

  private static LinearColour light(BufferedImage image, int x, int y) {
    return LinearColour.ofHex("#%06x".formatted(image.getRGB(x, y) & 0xffffff));
  }

  @Test
  void points_that_no_camera_above_the_floor_could_see_so_give_no_picture() {
    List<Vec> seen = inPhoto();
    List<Vec> exchanged = List.of(seen.get(2), seen.get(3), seen.get(0), seen.get(1));
    List<Vec> inLine =
        List.of(new Vec(0, 0), new Vec(100, 100), new Vec(200, 200), new Vec(300, 10));
    for (List<Vec> bad : List.of(exchanged, inLine, seen.subList(0, 3))) {
      assertThat(FloorRendering.onPhoto(plated(), photo(), POINTS, bad, List.of())).isEmpty();
    }
  }

  @Test
  void a_mask_without_any_floor_in_it_gives_no_picture() {
    List<Vec> sky = List.of(new Vec(0, 0), new Vec(50, 0), new Vec(50, 20), new Vec(0, 20));
    assertThat(FloorRendering.onPhoto(plated(), photo(), POINTS, inPhoto(), sky)).isEmpty();
  }
}
