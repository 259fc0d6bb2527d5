package slabwright.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;

class JtsTest {
  private static Coordinate at(double x, double y) {
    return new Coordinate(x, y);
  }

  @Test
  void a_closed_chain_leaves_out_what_falls_on_one_grid_point() {
    assertThat(Jts.closed(Ring.of(0, 0, 0.0003, 0, 4, 0, 4, 3, 4, 3.0004)))
        .containsExactly(at(0, 0), at(4, 0), at(4, 3), at(0, 0));
  }

  @Test
  void a_closed_chain_that_ends_where_it_began_is_not_closed_twice() {
    assertThat(Jts.closed(Ring.of(0, 0, 4, 0, 4, 3, 0, 0.0002)))
        .containsExactly(at(0, 0), at(4, 0), at(4, 3), at(0, 0));
    assertThat(Jts.closed(Ring.of(1, 1, 1.0001, 1))).containsExactly(at(1, 1));
  }

  @Test
  void a_line_lies_on_the_grid_and_one_of_one_point_is_empty() {
    assertThat(Jts.line(Line.of(new Vec(0.0004, 0), new Vec(1.9996, 2))).getCoordinates())
        .containsExactly(at(0, 0), at(2, 2));
    assertThat(Jts.line(new Line(List.of(new Vec(1, 1)))).isEmpty()).isTrue();
    assertThat(Jts.line(new Line(List.of())).isEmpty()).isTrue();
  }
}
