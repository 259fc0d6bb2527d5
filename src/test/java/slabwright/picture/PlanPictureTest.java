package slabwright.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import slabwright.floor.FloorTakeoff;
import slabwright.shape.Vec;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.Spot;
import slabwright.site.TrenchLevel;
import slabwright.units.Length;
import slabwright.work.book.BookSamples;
import slabwright.work.book.ShopBook;

class PlanPictureTest {
  private static final double SCALE = 0.05;

  private static FloorRendering of(FloorScene scene) {
    return FloorRendering.plan(scene, SCALE, PictureSamples.PAPER);
  }

  private static BufferedImage picture(FloorScene scene) {
    return of(scene).whole(() -> false);
  }

  /** Mean light of the pixels around a place of the site. */
  private static LinearColour seen(FloorRendering r, BufferedImage image, double x, double y) {
    Vec p = r.toPixels().apply(new Vec(x, y));
    LinearColour sum = new LinearColour(0, 0, 0);
    for (int dy = -3; dy <= 3; dy++) {
      for (int dx = -3; dx <= 3; dx++) {
        int rgb = image.getRGB((int) p.x() + dx, (int) p.y() + dy);
        LinearColour c = LinearColour.ofHex("#%06x".formatted(rgb & 0xffffff));
        sum = new LinearColour(sum.r() + c.r(), sum.g() + c.g(), sum.b() + c.b());
      }
    }
    return sum.times(1 / 49.0);
  }

  private static LinearColour seen(FloorScene scene, double x, double y) {
    return seen(of(scene), picture(scene), x, y);
  }

  private static double apart(LinearColour a, LinearColour b) {
    return Math.abs(a.r() - b.r()) + Math.abs(a.g() - b.g()) + Math.abs(a.b() - b.b());
  }

  private static Mark zone(MarkKind kind) {
    Length side = Length.mm(1500);
    Form form = new Form.Rectangle(Spot.mm(2000, 2000), side, side, Length.ZERO, 0);
    return Mark.of("m", "mark", kind, form);
  }

  @Test
  void more_coats_of_dye_are_darker_in_every_channel() {
    LinearColour none = seen(PictureSamples.scene(PictureSamples.room(List.of())), 2000, 2000);
    LinearColour before = none;
    for (int coats = 1; coats <= 4; coats++) {
      LinearColour now =
          seen(
              PictureSamples.scene(PictureSamples.room(List.of(), PictureSamples.dye(coats))),
              2000,
              2000);
      assertThat(now.r()).isLessThan(before.r());
      assertThat(now.g()).isLessThan(before.g());
      assertThat(now.b()).isLessThan(before.b());
      before = now;
    }
  }

  @Test
  void a_dye_that_lets_all_light_through_leaves_the_slab_as_it_is() {
    LinearColour all = DyeFilm.transmission(GroundLook.SLAB, GroundLook.SLAB, 5, 2);
    assertThat(all).isEqualTo(new LinearColour(1, 1, 1));
  }

  @Test
  void the_books_coats_give_the_colour_and_twice_as_many_its_square() {
    LinearColour wanted = new LinearColour(0.2, 0.1, 0.05);
    LinearColour ground = new LinearColour(0.4, 0.4, 0.4);
    LinearColour once = DyeFilm.transmission(wanted, ground, 2, 2);
    LinearColour twice = DyeFilm.transmission(wanted, ground, 4, 2);
    assertThat(once.times(ground).r()).isEqualTo(0.2, within(1e-12));
    assertThat(twice.r()).isEqualTo(once.r() * once.r(), within(1e-12));
    assertThat(twice.b()).isEqualTo(once.b() * once.b(), within(1e-12));
  }

  @Test
  void dye_never_lightens_and_a_brighter_colour_keeps_its_hue() {
    LinearColour ground = new LinearColour(0.4, 0.4, 0.4);
    LinearColour t = DyeFilm.transmission(new LinearColour(0.8, 0.4, 0.2), ground, 1, 1);
    assertThat(t).isEqualTo(new LinearColour(1, 0.5, 0.25));
  }

  @Test
  void each_kind_of_ground_is_told_apart_from_the_slab_around_it() {
    List<MarkKind> kinds =
        List.of(
            new MarkKind.Trench(TrenchLevel.LOW, false),
            new MarkKind.Trench(TrenchLevel.FLUSH, false),
            new MarkKind.Patch(),
            new MarkKind.Residue("carpet adhesive"),
            new MarkKind.DrainOrBox());
    for (MarkKind k : kinds) {
      FloorScene scene =
          PictureSamples.scene(PictureSamples.room(List.of(zone(k)), PictureSamples.dye(2)));
      LinearColour inside = seen(scene, 2000, 2000);
      LinearColour beside = seen(scene, 2000, 3300);
      assertThat(apart(inside, beside)).as(k.toString()).isGreaterThan(0.04);
    }
  }

  /** A proud trench has nearly the slab's mean colour; it shows larger stones. */
  @Test
  void a_proud_trench_shows_more_stone_than_the_slab_around_it() {
    FloorScene scene =
        PictureSamples.scene(
            PictureSamples.room(
                List.of(zone(new MarkKind.Trench(TrenchLevel.PROUD, false))),
                PictureSamples.dye(2)));
    BufferedImage image = picture(scene);
    FloorRendering r = of(scene);
    assertThat(scatter(r, image, 2000)).isGreaterThan(2 * scatter(r, image, 3300));
  }

  private static double scatter(FloorRendering r, BufferedImage image, double y) {
    Vec p = r.toPixels().apply(new Vec(2000, y));
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < 400; i++) {
      int rgb = image.getRGB((int) p.x() + i % 20 - 10, (int) p.y() + i / 20 - 10);
      double light = rgb >> 8 & 255;
      sum += light;
      squares += light * light;
    }
    return Math.sqrt(squares / 400 - sum / 400 * sum / 400);
  }

  /** The sun of the emblem stands right of its middle and above it; nothing else is warm there. */
  @Test
  void the_graphic_lies_in_its_place_and_the_right_way_round() {
    FloorScene scene = PictureSamples.tramHallScene();
    FloorRendering r = FloorRendering.plan(scene, 0.1, PictureSamples.PAPER);
    BufferedImage image = r.whole(() -> false);
    double x = (29 * 12 + 8) * 25.4;
    double y = (7 * 12 + 2) * 25.4;
    LinearColour sun = seen(r, image, x + 370, y + 460);
    assertThat(sun.r()).isGreaterThan(2 * sun.b());
    for (int[] mirrored : new int[][] {{-1, 1}, {1, -1}, {-1, -1}}) {
      LinearColour other = seen(r, image, x + 370 * mirrored[0], y + 460 * mirrored[1]);
      assertThat(other.r()).isLessThan(1.4 * other.b());
    }
  }

  @Test
  void equal_floors_give_equal_pixels_and_bands_join_to_the_whole() {
    FloorRendering r = of(PictureSamples.tramHallScene());
    BufferedImage whole = r.whole(() -> false);
    FloorRendering again = of(PictureSamples.tramHallScene());
    for (int top = 0; top < r.height(); top += 37) {
      BufferedImage band = again.band(top, Math.min(37, r.height() - top), () -> false);
      for (int y = 0; y < band.getHeight(); y++) {
        for (int x = 0; x < band.getWidth(); x++) {
          assertThat(band.getRGB(x, y)).isEqualTo(whole.getRGB(x, top + y));
        }
      }
    }
  }

  @Test
  void the_png_read_back_is_the_picture() throws IOException {
    FloorRendering r = of(PictureSamples.scene(PictureSamples.room(List.of())));
    BufferedImage whole = r.whole(() -> false);
    BufferedImage read =
        ImageIO.read(new ByteArrayInputStream(r.png("what to expect", () -> false)));
    assertThat(read.getWidth()).isEqualTo(r.width());
    assertThat(read.getHeight()).isEqualTo(r.height());
    for (int y = 0; y < r.height(); y++) {
      for (int x = 0; x < r.width(); x++) {
        assertThat(read.getRGB(x, y)).isEqualTo(whole.getRGB(x, y));
      }
    }
  }

  @Test
  void a_cancelled_picture_stops_before_it_is_done() {
    FloorRendering r =
        FloorRendering.plan(PictureSamples.tramHallScene(), 0.1, PictureSamples.PAPER);
    AtomicInteger asked = new AtomicInteger();
    assertThatThrownBy(() -> r.whole(() -> asked.incrementAndGet() > 3))
        .isInstanceOf(CancellationException.class);
    assertThat(asked.get()).isLessThan(r.height() / 32);
  }

  @Test
  void a_band_of_more_than_twelve_megapixels_is_not_painted() {
    FloorRendering r = FloorRendering.plan(PictureSamples.tramHallScene(), 1, PictureSamples.PAPER);
    assertThat(r.bandRows() * (long) r.width()).isLessThanOrEqualTo(FloorRendering.MOST_PIXELS);
    assertThatThrownBy(() -> r.band(0, r.bandRows() + 1, () -> false))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void a_dye_without_a_colour_in_the_book_is_named_and_not_shown() {
    ShopBook silent = ShopBook.of(BookSamples.text().with("product", "base-dye", "colour", "?"));
    FloorTakeoff floor = FloorTakeoff.of(PictureSamples.room(List.of(), PictureSamples.dye(2)));
    FloorScene scene = FloorScene.of(floor, List.of(), silent);
    FloorScene bare = PictureSamples.scene(PictureSamples.room(List.of()));
    assertThat(scene.uncoloured()).containsExactly("Solvent dye for the floor (invented)");
    assertThat(apart(seen(scene, 2000, 2000), seen(bare, 2000, 2000))).isZero();
  }
}
