package slabwright.tape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.tape.leastsquares.Datum;
import slabwright.tape.leastsquares.DistanceObservation;
import slabwright.tape.leastsquares.Observation;
import slabwright.tape.leastsquares.Reliability;
import slabwright.units.Length;

/** The ± of an area against slopes taken by moving each corner a little. */
class OutlineAreaTest {
  private static final double[] LEFT = {0, 0, 8000, 0, 9000, 6000, -1000, 5000};

  /** The same walked with the room on the right. */
  private static final double[] RIGHT = {0, 0, 8000, 0, 9000, -6000, -1000, -5000};

  private static final List<Double> FLAT = List.of(0.0, 0.0, 0.0, 0.0);
  private static final List<Double> BOWED = List.of(0.0, 60.0, -50.0, 40.0);
  private static final TapeError TAPE = new TapeError(new Length(10, "10 mm"), 0);

  private static Reliability taped(double[] xy) {
    List<Observation> readings = new ArrayList<>();
    for (int a = 0; a < 4; a++) {
      for (int b = a + 1; b < 4; b++) {
        double read = Math.hypot(xy[2 * a] - xy[2 * b], xy[2 * a + 1] - xy[2 * b + 1]);
        readings.add(new DistanceObservation(a, b, read, 10 + a + b));
      }
    }
    return Reliability.at(xy, Datum.firstWall(4), readings).orElseThrow();
  }

  private static double slope(double[] xy, List<Double> rises, int c) {
    double[] more = xy.clone();
    double[] less = xy.clone();
    more[c] += 0.5;
    less[c] -= 0.5;
    return new OutlineArea(more, rises).area() - new OutlineArea(less, rises).area();
  }

  private static double variance(double[] xy, List<Double> rises, Reliability q) {
    double variance = 0;
    for (int c = 0; c < xy.length; c++) {
      for (int d = 0; d < xy.length; d++) {
        variance += slope(xy, rises, c) * slope(xy, rises, d) * q.cofactor(c, d);
      }
    }
    return variance;
  }

  private static double deviation(double[] xy, List<Double> rises) {
    return new OutlineArea(xy, rises).standardDeviation(taped(xy), TAPE);
  }

  @Test
  void the_deviation_of_straight_walls_is_that_of_their_corners() {
    for (double[] xy : List.of(LEFT, RIGHT)) {
      double expected = Math.sqrt(variance(xy, FLAT, taped(xy)));
      assertThat(deviation(xy, FLAT)).isEqualTo(expected, within(expected * 1e-6));
    }
  }

  /** Each rise is read to 10 mm: two thirds of its chord times that. */
  @Test
  void curved_walls_add_what_their_rises_are_known_to() {
    double chords =
        1000 * 1000 + 6000 * 6000 + 10000.0 * 10000 + 1000 * 1000 + 1000 * 1000 + 5000 * 5000;
    for (double[] xy : List.of(LEFT, RIGHT)) {
      double rises = chords * Math.pow(2 / 3.0 * 10, 2);
      double expected = Math.sqrt(variance(xy, BOWED, taped(xy)) + rises);
      assertThat(deviation(xy, BOWED)).isEqualTo(expected, within(expected * 1e-4));
    }
  }

  /** A chord's slopes alone: corners known to nothing but the length of a much bowed wall. */
  @Test
  void a_bow_makes_the_area_depend_on_its_chord() {
    double[] xy = {0, 0, 6000, 0, 6000, 4000, 0, 4000};
    List<Double> bow = List.of(0.0, 400.0, 0.0, 0.0);
    double expected = Math.sqrt(variance(xy, bow, taped(xy)) + Math.pow(4000 * 2 / 3.0 * 10, 2));
    double flat = Math.sqrt(variance(xy, FLAT, taped(xy)) + Math.pow(4000 * 2 / 3.0 * 10, 2));
    assertThat(deviation(xy, bow)).isEqualTo(expected, within(expected * 2e-3));
    assertThat(Math.abs(expected - flat)).isGreaterThan(expected * 4e-3);
  }

  @Test
  void a_room_on_the_left_of_its_walk_is_told_from_one_on_the_right() {
    assertThat(new OutlineArea(LEFT, FLAT).leftHanded()).isTrue();
    assertThat(new OutlineArea(RIGHT, FLAT).leftHanded()).isFalse();
    assertThat(Optional.of(new OutlineArea(LEFT, FLAT).area())).contains(49.5e6);
  }
}
