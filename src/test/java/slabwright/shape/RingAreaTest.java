package slabwright.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Areas from coordinates as printed in surveying exercises. */
class RingAreaTest {
  @Test
  void the_pentagon_of_a_public_programming_task() {
    Ring ring = Ring.of(3, 4, 5, 11, 12, 8, 9, 5, 5, 6);
    assertThat(Math.abs(ring.signedArea())).isEqualTo(30);
    assertThat(Region.of(ring).area()).isCloseTo(30, within(1e-9));
  }

  @Test
  void a_traverse_of_four_courses_in_feet() {
    Ring ring = Ring.of(2000.000, 500.000, 1561.426, 323.614, 1488.321, 526.996, 1686.956, 719.336);
    assertThat(Region.of(ring).area()).isCloseTo(102_935.7, within(0.05));
  }

  @Test
  void an_exercise_printed_to_twenty_square_feet() {
    Ring ring = Ring.of(1000, 600, 1209.288, 254.542, 566.876, 97.543, 397.969, 470.303);
    assertThat(Region.of(ring).area()).isCloseTo(250_550, within(20.0));
  }
}
