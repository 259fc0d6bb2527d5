package slabwright.desk.model.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import slabwright.desk.model.input.TypedWall;
import slabwright.shape.Vec;
import slabwright.units.Length;
import slabwright.units.Result;

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

  @Test
  void a_line_may_begin_with_its_turn() {
    TypedWall line = TypedWall.read("l 12' 3\"").orThrow();
    assertThat(line.turn()).hasValue(90);
    assertThat(line.length().typed()).isEqualTo("12' 3\"");
    assertThat(TypedWall.read("r45 3 m").orThrow().turn()).hasValue(-45);
    assertThat(TypedWall.read("24' 6\"").orThrow().turn()).isEmpty();
  }

  @Test
  void a_line_without_a_unit_is_refused() {
    assertThat(TypedWall.read("r 12")).isInstanceOf(Result.Refused.class);
  }
}
