package slabwright.floor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.shape.Bounds;
import slabwright.shape.FillRule;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

class FloorCornersTest {
  @Test
  void one_stands_in_the_corners_of_a_room_and_walks_round_those_of_a_wall_that_juts_out() {
    FloorCorners l =
        FloorCorners.of(
            Region.of(Ring.of(0, 0, 6_000, 0, 6_000, 3_000, 2_000, 3_000, 2_000, 5_000, 0, 5_000)));
    assertThat(l.inside())
        .containsExactlyInAnyOrder(
            new Vec(0, 0),
            new Vec(6_000, 0),
            new Vec(6_000, 3_000),
            new Vec(2_000, 5_000),
            new Vec(0, 5_000));
    assertThat(l.outside()).containsExactly(new Vec(2_000, 3_000));
  }

  @Test
  void one_walks_round_all_corners_of_what_stands_on_the_floor() {
    Region booth = Region.rectangle(new Bounds(1_000, 1_000, 2_000, 2_000));
    FloorCorners hall =
        FloorCorners.of(Region.rectangle(new Bounds(0, 0, 6_000, 4_000)).minus(booth));
    assertThat(hall.inside()).hasSize(4);
    assertThat(hall.outside())
        .containsExactlyInAnyOrder(
            new Vec(1_000, 1_000),
            new Vec(2_000, 1_000),
            new Vec(2_000, 2_000),
            new Vec(1_000, 2_000));
  }

  /** A ring of ten corners turns by 36° at each, one of eight by 45°. */
  @Test
  void a_turn_of_40_degrees_and_less_is_no_corner() {
    assertThat(FloorCorners.of(ring(10)).inside()).isEmpty();
    assertThat(FloorCorners.of(ring(8)).inside()).hasSize(8);
  }

  private static Region ring(int corners) {
    double[] xy = new double[2 * corners];
    for (int i = 0; i < corners; i++) {
      xy[2 * i] = 2_000 * Math.cos(2 * Math.PI * i / corners);
      xy[2 * i + 1] = 2_000 * Math.sin(2 * Math.PI * i / corners);
    }
    return Region.of(List.of(Ring.of(xy)), FillRule.NONZERO);
  }
}
