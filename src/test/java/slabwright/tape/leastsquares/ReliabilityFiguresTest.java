package slabwright.tape.leastsquares;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** How far readings check each other, worked out by hand for one wall of a metre. */
class ReliabilityFiguresTest {
  private static final double[] WALL = {0, 0, 1000, 0};

  private static Observation wall(double read, double sd) {
    return new DistanceObservation(0, 1, read, sd);
  }

  private static Reliability of(Observation... readings) {
    return Reliability.at(WALL, Datum.firstWall(2), List.of(readings)).orElseThrow();
  }

  /**
   * Weights 1, 1 and 1/4: the cofactor of the length is 1 / 2.25 = 4/9; what of each reading is
   * checked is 1 − 4/9, 1 − 4/9 and 1 − 4/9 · 1/4.
   */
  @Test
  void three_readings_of_a_wall_check_each_other_by_their_weights() {
    Reliability q = of(wall(1001, 1), wall(1000, 1), wall(998, 2));
    assertThat(q.cofactor(2, 2)).isEqualTo(4 / 9.0, within(1e-12));
    assertThat(q.redundancy(0)).isEqualTo(5 / 9.0, within(1e-12));
    assertThat(q.redundancy(2)).isEqualTo(8 / 9.0, within(1e-12));
    assertThat(q.residual(0)).isEqualTo(-1, within(1e-12));
    assertThat(q.statistic(0)).isEqualTo(-1 / Math.sqrt(5 / 9.0), within(1e-12));
    assertThat(q.statistic(2)).isEqualTo(2 / (2 * Math.sqrt(8 / 9.0)), within(1e-12));
  }

  /** −4/9 / (5/9) = −0.8 and −4/9 · 1/2 / √(5/9 · 8/9) = −1/√10. */
  @Test
  void statistics_of_readings_of_one_wall_pull_against_each_other() {
    Reliability q = of(wall(1001, 1), wall(1000, 1), wall(998, 2));
    assertThat(q.correlations(0))
        .containsExactly(new double[] {1, -0.8, -1 / Math.sqrt(10)}, within(1e-12));
    assertThat(q.correlations(2))
        .containsExactly(new double[] {-1 / Math.sqrt(10), -1 / Math.sqrt(10), 1}, within(1e-12));
  }

  @Test
  void a_reading_that_nothing_checks_is_tied_to_no_other() {
    double[] triangle = {0, 0, 3000, 0, 0, 4000};
    List<Observation> readings =
        List.of(
            new DistanceObservation(0, 1, 3001, 1),
            new DistanceObservation(0, 1, 3000, 1),
            new DistanceObservation(0, 2, 4000, 1),
            new DistanceObservation(1, 2, 5000, 1));
    Reliability q = Reliability.at(triangle, Datum.firstWall(3), readings).orElseThrow();
    assertThat(q.checked(0)).isTrue();
    assertThat(q.checked(2)).isFalse();
    assertThat(q.statistic(2)).isZero();
    assertThat(q.correlations(0)).containsExactly(new double[] {1, -1, 0, 0}, within(1e-9));
    assertThat(q.correlations(2)).containsExactly(new double[] {0, 0, 1, 0}, within(1e-9));
  }

  /** A spread of a quarter of the wall's length and more. */
  @Test
  void a_place_known_to_a_quarter_of_the_room_is_free() {
    Datum datum = Datum.firstWall(2);
    assertThat(Reliability.at(WALL, datum, List.of(wall(1000, 250)))).isEmpty();
    assertThat(Reliability.at(WALL, datum, List.of(wall(1000, 251)))).isEmpty();
    assertThat(Reliability.at(WALL, datum, List.of(wall(1000, 249)))).isPresent();
  }
}
