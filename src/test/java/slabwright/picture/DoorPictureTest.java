package slabwright.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;
import slabwright.shape.fit.Homography;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.Spot;
import slabwright.units.Length;

class DoorPictureTest {
  private static final int WIDTH = 320;
  private static final int HEIGHT = 200;

  /** A room of 4 m with a door in the middle of its lower wall, and what stands in it. */
  private static FloorScene room(List<Mark> marks) {
    FloorArea area =
        PictureSamples.room(marks)
            .withDoorways(
                List.of(new Doorway("door", "door", 0, Length.mm(1500), Length.mm(1000), true)));
    return PictureSamples.scene(area);
  }

  private static DoorCamera camera(FloorScene scene) {
    return DoorCamera.of(scene, DoorCamera.wayIn(scene), WIDTH, HEIGHT);
  }

  /** The pinhole's law, closed form: x = m + f · right / ahead, y = h + f · (eye − up) / ahead. */
  @Test
  void a_camera_shows_points_where_the_pinhole_law_puts_them() {
    DoorCamera c = new DoorCamera(new Vec(1000, -500), new Vec(0, 1), 1600, 800, 400, 120);
    for (double up : new double[] {0, 1050, 2400}) {
      Homography h = c.toPixels(up);
      for (Vec p : List.of(new Vec(1000, 1500), new Vec(3000, 3500), new Vec(-200, 900))) {
        double ahead = p.y() + 500;
        Vec seen = h.apply(p);
        assertThat(seen.x()).isEqualTo(400 + 800 * (p.x() - 1000) / ahead, within(1e-9));
        assertThat(seen.y()).isEqualTo(120 + 800 * (1600 - up) / ahead, within(1e-9));
        assertThat(h.depth(p)).isEqualTo(ahead, within(1e-9));
      }
    }
  }

  @Test
  void the_eye_stands_before_the_way_in_and_looks_in() {
    DoorCamera c = camera(room(List.of()));
    assertThat(c.eye().x()).isEqualTo(2000, within(1e-6));
    assertThat(c.eye().y()).isNegative();
    assertThat(c.ahead().y()).isEqualTo(1, within(1e-9));
    assertThat(c.height()).isEqualTo(1600);
  }

  @Test
  void a_floor_without_a_door_is_seen_from_its_first_edge() {
    FloorScene scene = PictureSamples.scene(PictureSamples.room(List.of()));
    assertThat(DoorCamera.wayIn(scene)).isEqualTo(Optional.empty());
    assertThat(FloorRendering.fromDoor(scene, WIDTH, HEIGHT).whole(() -> false)).isNotNull();
  }

  @Test
  void a_block_stands_over_what_lies_behind_it_and_the_floor_before_it_stays() {
    Form foot =
        new Form.Rectangle(Spot.mm(2000, 2500), Length.mm(800), Length.mm(400), Length.ZERO, 0);
    Mark counter = Mark.of("c", "counter", new MarkKind.Island(), foot);
    FloorScene with = room(List.of(counter));
    FloorScene without = room(List.of());
    BufferedImage a = FloorRendering.fromDoor(with, WIDTH, HEIGHT).whole(() -> false);
    BufferedImage b = FloorRendering.fromDoor(without, WIDTH, HEIGHT).whole(() -> false);
    DoorCamera c = camera(with);
    Vec front = c.toPixels(500).apply(new Vec(2000, 2300));
    Vec behind = c.toPixels(0).apply(new Vec(2000, 3200));
    Vec near = c.toPixels(0).apply(new Vec(2900, 1300));
    assertThat(rgb(a, front)).isNotEqualTo(rgb(b, front));
    assertThat(rgb(a, behind)).as("hidden floor").isNotEqualTo(rgb(b, behind));
    assertThat(rgb(a, near)).isEqualTo(rgb(b, near));
  }

  private static int rgb(BufferedImage image, Vec p) {
    return image.getRGB((int) p.x(), (int) p.y());
  }

  @Test
  void bands_of_the_view_join_to_the_whole() {
    FloorScene scene = PictureSamples.tramHallScene();
    FloorRendering r = FloorRendering.fromDoor(scene, WIDTH, HEIGHT);
    BufferedImage whole = r.whole(() -> false);
    FloorRendering again = FloorRendering.fromDoor(scene, WIDTH, HEIGHT);
    for (int top = 0; top < HEIGHT; top += 23) {
      BufferedImage band = again.band(top, Math.min(23, HEIGHT - top), () -> false);
      for (int y = 0; y < band.getHeight(); y++) {
        for (int x = 0; x < WIDTH; x++) {
          assertThat(band.getRGB(x, y)).isEqualTo(whole.getRGB(x, top + y));
        }
      }
    }
  }

  /** Schlick's approximation, three quarters of what it adds at a slant kept in the mirror. */
  @Test
  void little_is_mirrored_straight_on_and_much_at_a_slant() {
    assertThat(DoorPainter.mirrored(1)).isEqualTo(0.04, within(1e-12));
    assertThat(DoorPainter.mirrored(0.5)).isEqualTo(0.04 + 0.75 * 0.96 / 32, within(1e-12));
    assertThat(DoorPainter.mirrored(0)).isEqualTo(0.04 + 0.75 * 0.96, within(1e-12));
  }

  @Test
  void a_sealed_floor_mirrors_the_wall_and_a_bare_one_hardly() {
    FloorArea bare = PictureSamples.room(List.of());
    FloorArea sealed =
        PictureSamples.room(
            List.of(),
            new slabwright.site.Finish.Coat(
                "topcoat", 2, slabwright.site.Finish.Target.WHOLE_FLOOR));
    FloorScene dull = PictureSamples.scene(bare);
    FloorScene glossy = PictureSamples.scene(sealed);
    assertThat(glossy.sheen().gloss()).isGreaterThan(5 * dull.sheen().gloss());
    DoorCamera c = DoorCamera.of(dull, Optional.empty(), WIDTH, HEIGHT);
    Vec far = c.toPixels(0).apply(new Vec(2000, 3950));
    int before = rgb(FloorRendering.fromDoor(dull, WIDTH, HEIGHT).whole(() -> false), far) & 255;
    int after = rgb(FloorRendering.fromDoor(glossy, WIDTH, HEIGHT).whole(() -> false), far) & 255;
    assertThat(after).isNotEqualTo(before);
  }

  @Test
  void the_eye_is_1600_mm_above_the_floor() {
    assertThat(DoorCamera.EYE).isEqualTo(1600);
  }
}
