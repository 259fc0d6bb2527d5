package slabwright.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;

class PixelOutlineTest {
  private static final int WIDTH = 8;

  private static float[] cover(int top, int rows, List<List<Vec>> rings) {
    float[] cover = new float[rows * (WIDTH + 2)];
    PixelOutline.ofPixels(rings).cover(top, rows, WIDTH, cover);
    return cover;
  }

  private static List<Vec> ring(double... xy) {
    List<Vec> all = new java.util.ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      all.add(new Vec(xy[i], xy[i + 1]));
    }
    return all;
  }

  @Test
  void a_pixel_is_covered_by_the_share_of_its_area() {
    float[] c = cover(0, 4, List.of(ring(1.25, 1, 3.5, 1, 3.5, 2.5, 1.25, 2.5)));
    assertThat(c[12]).as("row 1, pixel 2").isEqualTo(1, within(1e-6f));
    assertThat(c[11]).isEqualTo(0.75f, within(1e-6f));
    assertThat(c[13]).isEqualTo(0.5f, within(1e-6f));
    assertThat(c[22]).as("row 2, half high").isEqualTo(0.5f, within(1e-6f));
    assertThat(c[21]).isEqualTo(0.375f, within(1e-6f));
    assertThat(c[2]).isZero();
  }

  @Test
  void a_slanted_edge_and_a_hole_sum_to_their_area() {
    float[] c =
        cover(0, 8, List.of(ring(0.3, 0.2, 7.9, 1.1, 4.2, 7.7), ring(4, 2.2, 3.5, 3.4, 4.6, 3.1)));
    double sum = 0;
    for (int y = 0; y < 8; y++) {
      for (int x = 0; x < WIDTH; x++) {
        sum += c[y * (WIDTH + 2) + x];
      }
    }
    double triangle = Math.abs((7.6 * 7.5) - (0.9 * 3.9)) / 2;
    double hole = Math.abs((-0.5 * 0.9) - (1.2 * 0.6)) / 2;
    assertThat(sum).isEqualTo(triangle - hole, within(1e-4));
  }

  @Test
  void a_row_is_the_same_whatever_rows_are_asked_with_it() {
    List<List<Vec>> rings = List.of(ring(0.3, 0.2, 7.9, 1.1, 4.2, 7.7));
    float[] all = cover(0, 8, rings);
    float[] some = cover(3, 2, rings);
    for (int i = 0; i < 2 * (WIDTH + 2); i++) {
      if (i % (WIDTH + 2) < WIDTH) {
        assertThat(some[i]).isEqualTo(all[3 * (WIDTH + 2) + i]);
      }
    }
  }

  @Test
  void what_lies_left_of_the_picture_still_covers_what_is_in_it() {
    float[] c = cover(0, 2, List.of(ring(-50, -5, 3, -5, 3, 9, -50, 9)));
    assertThat(c[0]).isEqualTo(1, within(1e-6f));
    assertThat(c[2]).isEqualTo(1, within(1e-6f));
    assertThat(c[3]).isZero();
  }

  /** The pixel after the last once kept what an edge had left for it: shadows had light seams. */
  @Test
  void no_pixel_beside_a_box_is_covered() {
    float[] c = cover(1, 1, List.of(ring(2.5, 1, 5.75, 1, 5.75, 3, 2.5, 3)));
    assertThat(c).containsExactly(0, 0, 0.5f, 1, 1, 0.75f, 0, 0, 0, 0);
  }
}
