package slabwright.shape.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

class HomographyTest {
  private static final List<Vec> SQUARE = points(0, 0, 1, 0, 1, 1, 0, 1);
  private static final List<Vec> TRAPEZIUM = points(0, 0, 4, 0, 3, 2, 1, 2);

  private static List<Vec> points(double... xy) {
    return Ring.of(xy).points();
  }

  private static void near(Vec actual, double x, double y) {
    assertThat(actual.x()).isEqualTo(x, within(1e-12));
    assertThat(actual.y()).isEqualTo(y, within(1e-12));
  }

  @Test
  void corners_go_to_corners() {
    Homography map = Homography.of(SQUARE, TRAPEZIUM).orElseThrow();
    for (int k = 0; k < 4; k++) {
      near(map.apply(SQUARE.get(k)), TRAPEZIUM.get(k).x(), TRAPEZIUM.get(k).y());
    }
  }

  /** By hand: the diagonals (0,0)-(3,2) and (4,0)-(1,2) meet at (2, 4/3). */
  @Test
  void the_middle_goes_to_where_the_diagonals_meet() {
    Homography map = Homography.of(SQUARE, TRAPEZIUM).orElseThrow();
    near(map.apply(new Vec(0.5, 0.5)), 2, 4.0 / 3);
  }

  /**
   * By hand: the sides (0,0)-(1,2) and (4,0)-(3,2) meet at (2, 4), the limit of v, with the horizon
   * at v = -1: y(v) = 4 v / (1 + v), x(u, v) = (4 u + 2 v) / (1 + v).
   */
  @Test
  void a_point_inside_goes_where_the_formula_by_hand_says() {
    Homography map = Homography.of(SQUARE, TRAPEZIUM).orElseThrow();
    near(map.apply(new Vec(0.25, 0.5)), (1 + 1) / 1.5, 2 / 1.5);
    assertThat(map.depth(new Vec(0.3, -1)) / map.depth(Vec.ZERO)).isEqualTo(0, within(1e-12));
  }

  /** By hand: (4u + 2v, 4v) / (1 + v) has the Jacobian 16 / (1 + v)³. */
  @Test
  void areas_grow_as_the_jacobian_by_hand_says() {
    Homography map = Homography.of(SQUARE, TRAPEZIUM).orElseThrow();
    assertThat(map.areaScale(new Vec(0.2, 0))).isEqualTo(16, within(1e-9));
    assertThat(map.areaScale(new Vec(0.2, 1))).isEqualTo(2, within(1e-9));
  }

  /** By hand: the Jacobian at (1/2, 0) is diagonal 4, 4; at (1/2, 1) diagonal 2, 1. */
  @Test
  void lengths_shrink_as_the_jacobian_by_hand_says() {
    Homography map = Homography.of(SQUARE, TRAPEZIUM).orElseThrow();
    assertThat(map.leastScale(new Vec(0.5, 0))).isEqualTo(4, within(1e-9));
    assertThat(map.leastScale(new Vec(0.5, 1))).isEqualTo(1, within(1e-9));
  }

  @Test
  void a_parallelogram_gives_an_affine_map() {
    Homography map = Homography.of(SQUARE, points(1, 1, 5, 2, 6, 5, 2, 4)).orElseThrow();
    near(map.apply(new Vec(3, -2)), 11, -2);
    assertThat(map.g() / map.i()).isEqualTo(0, within(1e-12));
  }

  @Test
  void corners_that_are_no_convex_quadrilateral_are_refused() {
    assertThat(Homography.of(SQUARE, points(0, 0, 1, 0, 2, 0, 0, 1))).isEmpty();
    assertThat(Homography.of(SQUARE, points(0, 0, 1, 1, 1, 0, 0, 1))).isEmpty();
    assertThat(Homography.of(SQUARE, points(0, 0, 4, 0, 1, 1, 0, 4))).isEmpty();
    assertThat(Homography.of(SQUARE, points(2, 2, 2, 2, 2, 2, 2, 2))).isEmpty();
    assertThat(Homography.of(points(0, 0, 1, 0, 1, 1), TRAPEZIUM)).isEmpty();
  }

  @Property(tries = 200)
  void the_inverse_brings_every_point_back(
      @ForAll @DoubleRange(min = -0.4, max = 2) double u,
      @ForAll @DoubleRange(min = -0.4, max = 2) double v,
      @ForAll @DoubleRange(min = -0.3, max = 0.3) double lean) {
    List<Vec> quad = points(0, 0, 4, lean, 3 + lean, 2, 1 - lean, 2 + lean);
    Homography map = Homography.of(SQUARE, quad).orElseThrow();
    Vec back = map.inverse().apply(map.apply(new Vec(u, v)));
    assertThat(back.distanceTo(new Vec(u, v))).isLessThan(1e-9);
  }
}
