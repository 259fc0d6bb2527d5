package slabwright.shape.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.shape.Ring;

class CrossingCountTest {
  private static final Ring FIRST = Ring.rectangle(0, 0, 10, 10);

  @Test
  void two_squares_that_overlap_at_a_corner_cross_twice() {
    List<Ring> two = List.of(FIRST, Ring.rectangle(5, 5, 15, 15));
    assertThat(CrossingCount.exceeds(two, 1)).isTrue();
    assertThat(CrossingCount.exceeds(two, 2)).isFalse();
  }

  @Test
  void a_ring_that_crosses_itself_counts() {
    List<Ring> bow = List.of(Ring.of(0, 0, 10, 10, 10, 0, 0, 10));
    assertThat(CrossingCount.exceeds(bow, 0)).isTrue();
    assertThat(CrossingCount.exceeds(bow, 1)).isFalse();
  }

  @Test
  void rings_that_touch_or_share_a_side_do_not_cross() {
    List<Ring> beside = List.of(FIRST, Ring.rectangle(10, 0, 20, 10), Ring.rectangle(0, 0, 10, 5));
    assertThat(CrossingCount.exceeds(beside, 0)).isFalse();
  }
}
