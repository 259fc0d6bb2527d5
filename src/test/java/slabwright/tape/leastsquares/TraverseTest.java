package slabwright.tape.leastsquares;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;

/** What is filled into a walk that was not read whole, worked out by hand. */
class TraverseTest {
  private static final double SQUARE = Math.PI / 2;
  private static final double NOT_READ = Double.NaN;

  /** Lengths of the walls in mm, NaN where none was read. */
  private static List<Observation> walls(double... lengths) {
    List<Observation> readings = new ArrayList<>();
    for (int k = 0; k < lengths.length; k++) {
      if (!Double.isNaN(lengths[k])) {
        readings.add(new DistanceObservation(k, (k + 1) % lengths.length, lengths[k], 1));
      }
    }
    return readings;
  }

  private static double[] corners(double[] turns, double... lengths) {
    return Traverse.of(turns, walls(lengths), -1).corners();
  }

  private static double[] turns(double... at) {
    return at;
  }

  @Test
  void two_lengths_that_were_not_read_of_a_hall_close_it() {
    double[] all = turns(SQUARE, SQUARE, SQUARE, SQUARE);
    assertThat(corners(all, 4000, 3000, NOT_READ, NOT_READ))
        .containsExactly(new double[] {0, 0, 4000, 0, 4000, 3000, 0, 3000}, within(1e-3));
  }

  /** A triangle of 3, 4 and 5 m: its two free sides are not square to each other. */
  @Test
  void two_lengths_aslant_to_each_other_close_a_triangle() {
    double[] all = turns(NOT_READ, SQUARE, SQUARE + Math.atan2(4, 3));
    List<Vec> courses = Traverse.of(all, walls(3000, NOT_READ, NOT_READ), -1).courses();
    assertThat(courses.get(1).length()).isEqualTo(4000, within(1e-3));
    assertThat(courses.get(2).length()).isEqualTo(5000, within(1e-3));
    assertThat(courses.get(2).x()).isEqualTo(-3000, within(1e-3));
  }

  @Test
  void a_length_is_never_taken_back_below_a_hundredth_of_the_usual_one() {
    List<Vec> straight = Traverse.of(turns(0, 0, 0), walls(1000, 1000, NOT_READ), -1).courses();
    assertThat(straight.get(2).x()).isEqualTo(10, within(1e-6));
  }

  @Test
  void a_single_turn_that_was_not_read_closes_the_walk() {
    double[] all = turns(NOT_READ, SQUARE, NOT_READ, SQUARE);
    assertThat(corners(all, 4000, 3000, 4000, 3000))
        .containsExactly(new double[] {0, 0, 4000, 0, 4000, 3000, 0, 3000}, within(1e-6));
  }

  @Test
  void several_turns_that_were_not_read_share_the_rest_of_the_circle() {
    double[] all = turns(SQUARE, SQUARE, NOT_READ, NOT_READ);
    assertThat(corners(all, 4000, 3000, 4000, 3000))
        .containsExactly(new double[] {0, 0, 4000, 0, 4000, 3000, 0, 3000}, within(1e-6));
  }

  @Test
  void a_walk_the_other_way_round_is_filled_the_other_way_round() {
    double[] all = turns(-SQUARE, -SQUARE, NOT_READ, NOT_READ);
    double[] xy = corners(all, 4000, 3000, 4000, 3000);
    assertThat(xy)
        .containsExactly(new double[] {0, 0, 4000, 0, 4000, -3000, 0, -3000}, within(1e-6));
  }

  @Test
  void a_walk_is_whole_when_each_wall_and_each_turn_but_the_first_was_read() {
    List<Observation> readings = walls(4000, 3000, 4000, 3000);
    for (int k = 1; k < 4; k++) {
      readings.add(new TurnObservation(k - 1, k, (k + 1) % 4, SQUARE, 0.01));
    }
    double[] none = new double[4];
    Arrays.fill(none, NOT_READ);
    assertThat(Traverse.of(none, readings, -1).complete()).isTrue();
    assertThat(Traverse.of(none, readings, 0).complete()).isFalse();
    assertThat(Traverse.of(none, readings, 6).complete()).isFalse();
  }
}
