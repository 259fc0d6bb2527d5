package slabwright.tape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;
import slabwright.units.Length;

class TapeWalkTest {
  private static TapeWalk walk(double... lengths) {
    TapeWalk w = TapeWalk.from(Vec.ZERO);
    for (double mm : lengths) {
      w = w.with(new TapeWalk.Wall(Length.mm(mm), w.walls().isEmpty() ? 0 : -90));
    }
    return w;
  }

  @Test
  void right_turns_walk_clockwise_from_the_first_wall() {
    assertThat(walk(4000, 3000).corners())
        .containsExactly(new Vec(0, 0), new Vec(4000, 0), new Vec(4000, -3000));
  }

  @Test
  void the_gap_is_the_way_back_to_the_first_corner() {
    assertThat(walk(4000, 3000).gap()).isCloseTo(5000, within(1e-9));
  }

  @Test
  void a_walk_that_ends_where_it_began_has_come_back() {
    assertThat(walk(4000, 3000, 4000, 2990).hasComeBack()).isTrue();
    assertThat(walk(4000, 3000, 2000, 3000).hasComeBack()).isFalse();
  }

  @Test
  void a_small_gap_is_spread_along_the_walls() {
    assertThat(walk(4000, 3000, 4000, 2990).closed()).hasSize(4);
  }

  @Test
  void taking_back_a_wall_gives_the_walk_before_it() {
    assertThat(walk(4000, 3000).withoutLast()).isEqualTo(walk(4000));
  }
}
