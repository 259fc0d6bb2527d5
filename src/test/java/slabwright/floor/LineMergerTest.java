package slabwright.floor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.shape.Line;
import slabwright.shape.Vec;

class LineMergerTest {
  private final LineMerger<String> merger = new LineMerger<>();

  private void piece(String key, double x0, double y0, double x1, double y1) {
    merger.add(key, new Vec(x0, y0), new Vec(x1, y1));
  }

  private List<Line> wall() {
    return merger.lines().get("wall");
  }

  @Test
  void pieces_that_follow_one_another_are_one_line_in_whatever_order_they_come() {
    piece("wall", 10, 0, 10, 5);
    piece("wall", 0, 0, 10, 0);
    piece("door", 10, 5, 20, 5);
    assertThat(wall())
        .containsExactly(new Line(List.of(new Vec(0, 0), new Vec(10, 0), new Vec(10, 5))));
    assertThat(merger.lines().get("door"))
        .containsExactly(new Line(List.of(new Vec(10, 5), new Vec(20, 5))));
  }

  @Test
  void a_corner_on_a_straight_stretch_is_left_out_also_when_it_is_off_by_rounding() {
    piece("wall", 0, 0, 400, 0);
    piece("wall", 400, 0, 700, 0.001);
    piece("wall", 700, 0.001, 1_000, 0);
    assertThat(wall().get(0).points()).containsExactly(new Vec(0, 0), new Vec(1_000, 0));
  }

  @Test
  void a_corner_that_is_no_rounding_stays_and_so_does_a_line_that_turns_back() {
    piece("wall", 0, 0, 500, 0.01);
    piece("wall", 500, 0.01, 1_000, 0);
    assertThat(wall().get(0).points()).hasSize(3);
    piece("back", 0, 0, 10, 0);
    piece("back", 10, 0, 4, 0);
    assertThat(merger.lines().get("back").get(0).points())
        .containsExactly(new Vec(0, 0), new Vec(10, 0), new Vec(4, 0));
  }

  @Test
  void a_ring_is_one_line_that_ends_where_it_began_and_what_is_apart_is_another() {
    piece("wall", 0, 0, 4, 0);
    piece("wall", 4, 0, 4, 3);
    piece("wall", 4, 3, 0, 0);
    piece("wall", 9, 9, 9, 8);
    assertThat(wall()).hasSize(2);
    assertThat(wall())
        .contains(new Line(List.of(new Vec(0, 0), new Vec(4, 0), new Vec(4, 3), new Vec(0, 0))));
  }
}
