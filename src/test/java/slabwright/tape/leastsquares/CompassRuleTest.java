package slabwright.tape.leastsquares;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;

/** Four printed traverses; in them x is the departure (east) and y the latitude (north). */
class CompassRuleTest {
  private static final Offset<Double> LAST_DIGIT = within(0.0001);

  /** Five courses in feet, C. Ghilani and P. Wolf, Elementary Surveying (course figures). */
  private final CompassRule five =
      traverse(
          course(647.25, 126, 55, 17),
          course(203.03, 178, 18, 58),
          course(720.35, 15, 31, 54),
          course(610.24, 284, 35, 20),
          course(285.13, 206, 9, 42));

  /** Six courses, everything printed: scribd.com/doc/279716815. */
  private final CompassRule six =
      traverse(
          course(495.85, 5, 30, 0),
          course(850.62, 46, 2, 0),
          course(855.45, 180 - 67, -38, 0),
          course(1020.87, 180 - 12, -25, 0),
          course(1117.26, 180 + 83, 44, 0),
          course(660.08, 360 - 55, -9, 0));

  /** Four courses in feet: jerrymahun.com, open access, soln-ss-trav-adj-2. */
  private final CompassRule four =
      traverse(
          course(639.15, 226, 54, 23),
          course(523.69, 0, 0, 0),
          course(409.54, 235, 2, 29),
          course(815.93, 79, 35, 2));

  /** Four courses in metres: scribd.com/doc/493615208. */
  private final CompassRule metres =
      traverse(
          course(80.40, 76, 0, 0),
          course(46.30, 180 - 36, 0, 0),
          course(72.80, 180 + 61, 0, 0),
          course(68.00, 360 - 38, 0, 0));

  private static CompassRule traverse(Vec... courses) {
    return CompassRule.of(List.of(courses));
  }

  private static Vec course(double length, int degrees, int minutes, int seconds) {
    double azimuth = Math.toRadians(degrees + minutes / 60.0 + seconds / 3600.0);
    return new Vec(length * Math.sin(azimuth), length * Math.cos(azimuth));
  }

  @Test
  void five_courses_close_as_printed() {
    assertThat(five.perimeter()).isEqualTo(2466.00, within(1e-9));
    assertVec(five.gap(), 0.0256, 0.0760);
    assertThat(five.gap().length()).isEqualTo(0.0802, LAST_DIGIT);
    assertThat(1 / five.ratio()).isEqualTo(30_700, within(100.0));
  }

  @Test
  void five_courses_are_adjusted_as_printed() {
    List<Vec> ends = new ArrayList<>(five.corners(new Vec(10000, 10000)).points());
    Offset<Double> thousandth = within(0.0011);
    double[][] printed = {
      {10517.444, 9611.165}, {10523.408, 9408.216}, {10716.289, 10102.239}, {10125.718, 10255.928}
    };
    for (int i = 0; i < printed.length; i++) {
      assertThat(ends.get(i + 1).x()).isEqualTo(printed[i][0], thousandth);
      assertThat(ends.get(i + 1).y()).isEqualTo(printed[i][1], thousandth);
    }
    assertThat(area(five)).isEqualTo(272_585, within(1.0));
  }

  @Test
  void six_courses_close_as_printed() {
    assertThat(six.perimeter()).isEqualTo(5000.13, within(1e-9));
    assertVec(six.gap(), 18.0737, 16.8171);
    assertThat(six.gap().length()).isEqualTo(24.6876, LAST_DIGIT);
    assertThat((int) (1 / six.ratio())).isBetween(200, 203);
  }

  @Test
  void six_courses_are_corrected_as_printed() {
    double[] latitude = {-1.6677, -2.8609, -2.8772, -3.4335, -3.7577, -2.2201};
    double[] departure = {-1.7923, -3.0747, -3.0922, -3.6901, -4.0385, -2.3860};
    for (int i = 0; i < 6; i++) {
      assertVec(six.corrections().get(i), departure[i], latitude[i]);
    }
  }

  @Test
  void six_courses_are_adjusted_as_printed() {
    double[] latitude = {491.8995, 587.6733, -328.4036, -1000.4252, -125.7134, 374.9694};
    double[] departure = {45.7328, 609.1538, 788.0003, 215.8168, -1114.6225, -544.0812};
    double[] length = {494.0208, 846.4208, 853.6940, 1023.4390, 1121.6894, 660.7771};
    for (int i = 0; i < 6; i++) {
      assertVec(six.adjusted().get(i), departure[i], latitude[i]);
      assertThat(six.adjusted().get(i).length()).isEqualTo(length[i], LAST_DIGIT);
    }
    assertThat(area(six)).isEqualTo(1_715_250.0494, within(0.001));
  }

  @Test
  void four_courses_are_adjusted_as_printed() {
    double[][] printed = {
      {-466.761, -436.631}, {-0.023, 523.715}, {-335.663, -234.640}, {802.447, 147.556}
    };
    for (int i = 0; i < 4; i++) {
      assertThat(four.adjusted().get(i).x()).isEqualTo(printed[i][0], within(0.001));
      assertThat(four.adjusted().get(i).y()).isEqualTo(printed[i][1], within(0.001));
    }
    assertThat(four.gap().length()).isEqualTo(0.1577, LAST_DIGIT);
    assertThat(1 / four.ratio()).isEqualTo(15_146, within(5.0));
  }

  @Test
  void four_metric_courses_are_adjusted_as_printed() {
    assertThat(metres.perimeter()).isEqualTo(267.5, within(1e-9));
    double[][] printed = {
      {78.1055, 19.3653}, {27.2678, -37.5063}, {-63.5874, -35.3716}, {Double.NaN, 53.5126}
    };
    for (int i = 0; i < 4; i++) {
      assertThat(metres.adjusted().get(i).y()).isEqualTo(printed[i][1], within(0.002));
      if (i < 3) {
        assertThat(metres.adjusted().get(i).x()).isEqualTo(printed[i][0], within(0.002));
      }
    }
    assertThat(area(metres)).isEqualTo(4169.14, within(0.01));
  }

  @Test
  void what_is_adjusted_closes() {
    for (CompassRule rule : List.of(five, six, four, metres)) {
      Vec gap = CompassRule.of(rule.adjusted()).gap();
      assertThat(gap.length()).isLessThan(1e-9 * rule.perimeter());
    }
  }

  private static double area(CompassRule rule) {
    return Math.abs(rule.corners(Vec.ZERO).signedArea());
  }

  private static void assertVec(Vec v, double x, double y) {
    assertThat(v.x()).isEqualTo(x, LAST_DIGIT);
    assertThat(v.y()).isEqualTo(y, LAST_DIGIT);
  }
}
