package slabwright.shape.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;

/** Points taken off a cubic that is known are laid on that very cubic again. */
class CubicFitTest {
  private static final Vec START = new Vec(0, 0);

  /** Not alike at its two ends, so that neither can be taken for the other. */
  private static final CurvedRing.Curve KNOWN =
      new CurvedRing.Curve(new Vec(10, 20), new Vec(34, 12), new Vec(40, 0));

  private static final Vec LEFT = KNOWN.first().unit();
  private static final Vec RIGHT = KNOWN.second().minus(KNOWN.end()).unit();

  private static double[] steps(int n) {
    double[] u = new double[n + 1];
    for (int i = 0; i <= n; i++) {
      u[i] = (double) i / n;
    }
    return u;
  }

  private static List<Vec> points(double[] u) {
    List<Vec> p = new ArrayList<>();
    for (double t : u) {
      p.add(CubicFit.point(START, KNOWN, t));
    }
    return p;
  }

  private static void is(Vec found, double x, double y) {
    assertThat(found.distanceTo(new Vec(x, y))).isLessThan(1e-9);
  }

  /** De Casteljau by hand at 1/2: an eighth of first, three of each control point, one of end. */
  @Test
  void a_point_of_a_curve_is_de_casteljau_s() {
    is(CubicFit.point(START, KNOWN, 0.5), (30 + 102 + 40) / 8.0, (60 + 36) / 8.0);
    is(CubicFit.point(START, KNOWN, 0.25), (27 * 10 + 9 * 34 + 40) / 64.0, (540 + 108) / 64.0);
    is(CubicFit.point(START, KNOWN, 0), 0, 0);
    is(CubicFit.point(START, KNOWN, 1), 40, 0);
  }

  @Test
  void points_of_a_cubic_give_that_cubic_back() {
    CubicFit fit = CubicFit.of(points(steps(8)), steps(8), LEFT, RIGHT);
    is(fit.curve().first(), 10, 20);
    is(fit.curve().second(), 34, 12);
    is(fit.curve().end(), 40, 0);
    assertThat(fit.start()).isEqualTo(START);
    assertThat(fit.worst()).isLessThan(1e-9);
  }

  @Test
  void the_point_that_lies_farthest_off_is_told_with_how_far_it_lies() {
    for (int bent : new int[] {1, 3, 11}) {
      List<Vec> p = points(steps(12));
      p.set(bent, p.get(bent).plus(new Vec(0, 2)));
      CubicFit fit = CubicFit.of(p, steps(12), LEFT, RIGHT);
      assertThat(fit.at()).isEqualTo(bent);
      double off = CubicFit.point(START, fit.curve(), bent / 12.0).distanceTo(p.get(bent));
      assertThat(fit.worst()).isCloseTo(off, within(1e-12)).isBetween(1.0, 2.0);
    }
  }

  @Test
  void two_points_alone_are_joined_with_thirds_of_their_distance() {
    List<Vec> two = List.of(START, new Vec(30, 0));
    CubicFit fit = CubicFit.of(two, new double[] {0, 1}, new Vec(0, 1), new Vec(-1, 0));
    is(fit.curve().first(), 0, 10);
    is(fit.curve().second(), 20, 0);
    assertThat(fit.worst()).isZero();
    assertThat(fit.at()).isEqualTo(1);
  }

  /** By least squares the curve would have to leave its ends backwards. */
  @Test
  void a_curve_never_leaves_its_ends_against_their_tangents() {
    List<Vec> p = List.of(START, new Vec(-40, 1), new Vec(15, 3), new Vec(30, 0));
    CubicFit fit = CubicFit.of(p, new double[] {0, 0.3, 0.6, 1}, new Vec(1, 0), new Vec(-1, 0));
    is(fit.curve().first(), 10, 0);
    is(fit.curve().second(), 20, 0);
  }

  /** One step of Newton: what is left is of the order of the square. */
  @Test
  void parameters_step_nearer_to_their_points() {
    double[] right = steps(8);
    double[] off = right.clone();
    for (int i = 1; i < 8; i++) {
      off[i] += i % 2 == 0 ? 0.01 : -0.01;
    }
    CubicFit fit = CubicFit.of(points(right), right, LEFT, RIGHT);
    double[] next = fit.nearer(points(right), off);
    assertThat(next[0]).isZero();
    assertThat(next[8]).isEqualTo(1);
    for (int i = 1; i < 8; i++) {
      assertThat(next[i]).as("point %d", i).isCloseTo(right[i], within(4e-4));
    }
  }

  /** The curve's ends are the nearest there is to points beyond them. */
  @Test
  void a_parameter_never_leaves_the_curve() {
    List<Vec> p = List.of(START, new Vec(-3, -8), new Vec(46, -14), KNOWN.end());
    CubicFit fit = new CubicFit(START, KNOWN, 0, 1);
    double[] next = fit.nearer(p, new double[] {0, 0.02, 0.98, 1});
    assertThat(next).containsExactly(0, 0, 1, 1);
  }
}
