package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Polygon;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.Underlay;

class UnderlayTest {
  /** Site mm to a pixel of a picture of 400 pixels when it is first laid. */
  private static final double FIRST = 15_000 / 400.0;

  /** A red rectangle on the floor as the camera sees it, pixels, going round it. */
  private static final List<Vec> SEEN =
      List.of(new Vec(60, 240), new Vec(360, 250), new Vec(300, 120), new Vec(100, 100));

  @TempDir Path data;

  private Path plan;
  private DeskUnderTest desk;
  private DeskGestures hands;

  @BeforeEach
  void layAPhoto() throws TimeoutException, IOException {
    BufferedImage photo = new BufferedImage(400, 300, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = photo.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, 400, 300);
    g.setColor(Color.RED);
    Polygon red = new Polygon();
    SEEN.forEach(v -> red.addPoint((int) v.x(), (int) v.y()));
    g.fillPolygon(red);
    g.dispose();
    Path folder = Files.createDirectories(data.resolve("camera"));
    Path file = folder.resolve("floor.png");
    ImageIO.write(photo, "png", file.toFile());
    plan = TestSites.shed(data);
    desk = DeskUnderTest.open(data, 1280, 800, List.of(plan.toString()));
    hands = new DeskGestures(desk);
    DeskUnderTest.on(
        () -> {
          desk.room().drops().open(file);
          return null;
        });
    desk.settle();
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private Underlay underlay() {
    return hands.site().underlay().orElseThrow();
  }

  private void clickPhoto(Vec pixel) throws TimeoutException {
    hands.clickSlab(pixel.x() * FIRST, -pixel.y() * FIRST);
  }

  @Test
  void a_dropped_picture_is_copied_beside_the_plan_and_scaled_by_a_known_length()
      throws TimeoutException {
    assertThat(data.resolve("floor.png")).exists();
    clickPhoto(new Vec(100, 150));
    clickPhoto(new Vec(300, 150));
    hands.line("4 m");
    assertThat(underlay().placing().a()).isCloseTo(20, within(0.4));
    assertThat(underlay().placing().d()).isCloseTo(-20, within(0.4));
  }

  @Test
  void a_line_traced_over_a_picture_lies_where_it_was_clicked_on_no_grid() throws TimeoutException {
    hands.press(KeyCode.D);
    List<Vec> at = List.of(new Vec(9147, -347), new Vec(12_749, -347), new Vec(12_749, -3751));
    for (Vec corner : at) {
      hands.clickSlab(corner.x(), corner.y());
    }
    hands.press(KeyCode.ENTER);
    List<Vec> drawn = hands.corners();
    assertThat(drawn).hasSize(3);
    for (int i = 0; i < 3; i++) {
      assertThat(drawn.get(i).distanceTo(at.get(i)))
          .as("corner %d, mm; a pixel is some 20", i)
          .isLessThan(45);
    }
  }

  @Test
  void the_whole_floor_is_shown_with_the_picture_it_is_traced_from() throws TimeoutException {
    hands.press(KeyCode.ESCAPE).press(KeyCode.SHORTCUT, KeyCode.DIGIT0);
    // The picture may still be read: it is in view when it is.
    WaitForAsyncUtils.waitFor(30, TimeUnit.SECONDS, () -> DeskUnderTest.on(this::isPictureInView));
  }

  /** Done again it is read anew, and no picture is read before a call of its own ends. */
  @Test
  void a_picture_still_being_read_when_the_whole_is_asked_for_is_in_view_once_it_is_read()
      throws TimeoutException {
    hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    boolean atOnce =
        DeskUnderTest.on(
            () -> {
              desk.room().bench().desk().redo();
              hands.slab().fit();
              return isPictureInView();
            });
    assertThat(atOnce).isFalse();
    WaitForAsyncUtils.waitFor(30, TimeUnit.SECONDS, () -> DeskUnderTest.on(this::isPictureInView));
  }

  private boolean isPictureInView() {
    Vec seen = hands.slab().viewport().toScreen(new Vec(400 * FIRST, -300 * FIRST));
    return new Bounds(0, 0, hands.slab().getWidth(), hands.slab().getHeight()).contains(seen);
  }

  @Test
  void a_slanted_photo_is_laid_flat_by_the_sides_of_a_rectangle()
      throws TimeoutException, IOException {
    hands.click("picture-flat");
    for (Vec corner : SEEN) {
      clickPhoto(corner);
    }
    hands.line("3 m").line("2 m");
    assertThat(underlay().file()).isEqualTo("floor-flat.png");
    redWithin(SEEN.get(0).times(FIRST), 3000, 2000);
    assertThat(DeskUnderTest.on(() -> ((Label) desk.node("picture-caution")).getText()))
        .contains("lean away from the camera");
  }

  @Test
  void corners_picked_the_other_way_round_give_no_mirror_image()
      throws TimeoutException, IOException {
    hands.click("picture-flat");
    for (int k : new int[] {0, 3, 2, 1}) {
      clickPhoto(SEEN.get(k));
    }
    hands.line("2 m").line("3 m");
    redWithin(SEEN.get(0).times(FIRST), 3000, 2000);
  }

  /**
   * The flat picture is red in the rectangle on the site that begins at a corner, and nowhere near.
   */
  private void redWithin(Vec seen, double wide, double high) throws IOException {
    BufferedImage flat = ImageIO.read(data.resolve(underlay().file()).toFile());
    Vec corner = new Vec(seen.x(), -seen.y());
    for (double x : new double[] {0.04, 0.5, 0.96}) {
      for (double y : new double[] {0.04, 0.5, 0.96}) {
        assertThat(red(flat, corner.plus(new Vec(x * wide, y * high)))).isTrue();
      }
      assertThat(red(flat, corner.plus(new Vec(x * wide, -0.08 * high)))).isFalse();
      assertThat(red(flat, corner.plus(new Vec(x * wide, 1.08 * high)))).isFalse();
    }
    assertThat(red(flat, corner.plus(new Vec(-0.06 * wide, high / 2)))).isFalse();
    assertThat(red(flat, corner.plus(new Vec(1.06 * wide, high / 2)))).isFalse();
  }

  private boolean red(BufferedImage flat, Vec site) {
    Vec pixel = underlay().placing().inverse().apply(site);
    Color c = new Color(flat.getRGB((int) pixel.x(), (int) pixel.y()), true);
    return c.getAlpha() > 200 && c.getRed() > 200 && c.getGreen() < 120;
  }
}
