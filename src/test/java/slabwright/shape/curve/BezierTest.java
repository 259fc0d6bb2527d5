package slabwright.shape.curve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;

class BezierTest {
  private static final Vec A = new Vec(0, 0);
  private static final Vec B = new Vec(0, 600);
  private static final Vec C = new Vec(900, -400);
  private static final Vec D = new Vec(1000, 300);

  private static double farthest(List<Vec> fine, List<Vec> chain) {
    double worst = 0;
    for (Vec p : fine) {
      double nearest = Double.POSITIVE_INFINITY;
      for (int i = 0; i + 1 < chain.size(); i++) {
        Vec along = chain.get(i + 1).minus(chain.get(i));
        double t = p.minus(chain.get(i)).dot(along) / along.dot(along);
        Vec foot = chain.get(i).plus(along.times(Math.max(0, Math.min(1, t))));
        nearest = Math.min(nearest, p.distanceTo(foot));
      }
      worst = Math.max(worst, nearest);
    }
    return worst;
  }

  private static List<Vec> from(Vec start, List<Vec> rest) {
    List<Vec> all = new ArrayList<>(List.of(start));
    all.addAll(rest);
    return all;
  }

  @Test
  void a_cubic_stays_within_its_tolerance() {
    List<Vec> fine = from(A, Bezier.cubic(A, B, C, D, 1e-4));
    for (double tolerance : new double[] {0.01, 0.1, 1, 10}) {
      List<Vec> chain = from(A, Bezier.cubic(A, B, C, D, tolerance));
      assertThat(farthest(fine, chain)).isLessThanOrEqualTo(tolerance);
    }
  }

  @Test
  void a_quadratic_stays_within_its_tolerance() {
    List<Vec> fine = from(A, Bezier.quadratic(A, B, D, 1e-4));
    List<Vec> chain = from(A, Bezier.quadratic(A, B, D, 0.1));
    assertThat(farthest(fine, chain)).isLessThanOrEqualTo(0.1).isGreaterThan(0.05);
  }

  @Test
  void a_straight_curve_is_one_step() {
    assertThat(Bezier.cubic(A, A.towards(D, 1 / 3.0), A.towards(D, 2 / 3.0), D, 0.01))
        .containsExactly(D);
  }

  /** By hand: (1−t)³ a + 3 (1−t)² t b + 3 (1−t) t² c + t³ d at a quarter, a half and three. */
  @Test
  void a_cubic_in_four_steps_runs_through_the_points_of_its_formula() {
    assertThat(Bezier.cubic(A, B, C, D, 90))
        .containsExactly(
            new Vec(142.1875, 201.5625), new Vec(462.5, 112.5), new Vec(801.5625, 42.1875), D);
  }

  /** Half way lies (a + 2 b + d) / 4; 1345 mm of second difference / 4 / 90 mm take two steps. */
  @Test
  void a_quadratic_in_two_steps_runs_through_the_point_half_way() {
    assertThat(Bezier.quadratic(A, B, D, 90)).containsExactly(new Vec(250, 375), D);
  }
}
