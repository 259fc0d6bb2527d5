package slabwright.shape.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

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

  /**
   * A corner that lies on another ring's side, from outside and from inside, begun at any corner.
   */
  @Test
  void a_corner_on_a_side_is_no_crossing_whichever_way_its_ring_runs() {
    List<Vec> outside = List.of(new Vec(10, 4), new Vec(14, 1), new Vec(15, 8));
    List<Vec> inside = List.of(new Vec(10, 4), new Vec(6, 8), new Vec(5, 1));
    for (List<Vec> triangle : List.of(outside, inside)) {
      for (int turn = 0; turn < 3; turn++) {
        List<Vec> corners = new ArrayList<>(triangle);
        Collections.rotate(corners, turn);
        List<Vec> back = new ArrayList<>(corners);
        Collections.reverse(back);
        for (List<Vec> way : List.of(corners, back)) {
          List<Ring> rings = List.of(Ring.rectangle(0, 0, 10, 10), new Ring(way));
          assertThat(CrossingCount.exceeds(rings, 0)).as("%s", way).isFalse();
          assertThat(CrossingCount.exceeds(List.of(rings.get(1), rings.get(0)), 0)).isFalse();
        }
      }
    }
  }

  /** A slanting side past a corner: it misses it on one side and cuts it off on the other. */
  @Test
  void a_side_that_just_misses_a_corner_crosses_nothing_and_one_that_cuts_it_crosses_twice() {
    Ring square = Ring.rectangle(20, 30, 24, 34);
    Ring misses = Ring.of(24.5, 36, 27, 33.4, 40, 50);
    assertThat(CrossingCount.exceeds(List.of(square, misses), 0)).isFalse();
    Ring cuts = Ring.of(22, 35, 25, 32, 40, 50);
    assertThat(CrossingCount.exceeds(List.of(square, cuts), 1)).isTrue();
    assertThat(CrossingCount.exceeds(List.of(square, cuts), 2)).isFalse();
  }
}
