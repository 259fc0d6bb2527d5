package slabwright.tape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.tape.AdjustmentFixtures.adjusted;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.shape.Arcs;
import slabwright.shape.Ring;

class RoomAreaTest {
  /** Heron's formula, encyclopediaofmath.org; the last value computed. */
  @ParameterizedTest
  @CsvSource({"13, 14, 15, 84", "3, 4, 5, 6", "15, 20, 25, 150", "5, 6, 7, 14.696938"})
  void three_walls_enclose_what_heron_says(double a, double b, double c, double area) {
    AdjustedRoom room =
        adjusted(
            "wall " + a + " m left about 120°",
            "wall " + b + " m left about 120°",
            "wall " + c + " m left about 120°");
    assertThat(room.area()).isEqualTo(area * 1e6, within(1.0));
  }

  /** Rosetta Code, task "shoelace formula"; the other from memory. */
  @Test
  void coordinates_give_the_printed_area() {
    assertThat(Math.abs(Ring.of(3, 4, 5, 11, 12, 8, 9, 5, 5, 6).signedArea())).isEqualTo(30);
    assertThat(Math.abs(Ring.of(1, 6, 3, 1, 7, 2, 4, 4, 8, 5).signedArea())).isEqualTo(16.5);
  }

  /** North and east of four points: jerrymahun.com, travcomps, chapter G, and its exercise. */
  @Test
  void coordinates_of_a_traverse_give_the_printed_area() {
    Ring worked =
        Ring.of(500.000, 2000.000, 323.614, 1561.426, 526.996, 1488.321, 719.336, 1686.956);
    assertThat(Math.abs(worked.signedArea())).isEqualTo(102_935.7, within(0.15));
    Ring exercise = Ring.of(600, 1000, 254.542, 1209.288, 97.543, 566.876, 470.303, 397.969);
    assertThat(Math.abs(exercise.signedArea())).isEqualTo(250_550, within(20.0));
  }

  /** Chord 21, height 6: segment 89.254148; help.matheass.eu, circular sections. */
  @Test
  void a_curved_wall_adds_its_segment_or_takes_it_away() {
    double chords = 21_000.0 * 10_000;
    assertThat(bowed("outward").area()).isEqualTo(chords + 89.254148e6, within(2.0));
    assertThat(bowed("inward").area()).isEqualTo(chords - 89.254148e6, within(2.0));
  }

  @Test
  void an_outward_wall_rises_to_the_right_of_a_walk_that_turns_left() {
    assertThat(bowed("outward").rises()).containsExactly(0.0, 0.0, 6000.0, 0.0);
    assertThat(bowed("inward").rises()).containsExactly(0.0, 0.0, -6000.0, 0.0);
    assertThat(Arcs.segmentArea(21, 6)).isEqualTo(89.254148, within(1e-6));
  }

  private static AdjustedRoom bowed(String side) {
    return adjusted(
        "wall 21 m left",
        "wall 10 m left",
        "curve 21 m rise 6 m " + side + " left",
        "wall 10 m left",
        "diagonal A C " + Math.hypot(21, 10) + " m");
  }

  /** A rectangle a × b from four walls and turns held true: var = (a² sb² + b² sa²) / 2. */
  @Test
  void the_area_s_deviation_is_that_of_two_sides_measured_twice() {
    AdjustedRoom room =
        adjusted(
            "tape error 10 mm",
            "wall 8 m left true",
            "wall 5 m left true",
            "wall 8 m left true",
            "wall 5 m left true",
            "check A-B to C-D is 5 m ± 100 m");
    double expected = Math.sqrt((8000.0 * 8000 + 5000.0 * 5000) * 100 / 2);
    assertThat(room.areaSd().orElseThrow()).isEqualTo(expected, within(expected * 0.01));
  }
}
