package slabwright.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class SegmentGeometryTest {
  private static final Vec A = new Vec(0, 0);
  private static final Vec B = new Vec(10, 0);
  private static final List<Vec> SQUARE = List.of(A, B, new Vec(10, 10), new Vec(0, 10));

  @Test
  void the_nearest_point_of_a_segment_is_its_foot_or_an_end() {
    assertThat(SegmentGeometry.nearest(A, B, new Vec(3, 4))).isEqualTo(new Vec(3, 0));
    assertThat(SegmentGeometry.nearest(A, B, new Vec(-3, 4))).isEqualTo(A);
    assertThat(SegmentGeometry.nearest(A, B, new Vec(13, 4))).isEqualTo(B);
    assertThat(SegmentGeometry.nearest(B, B, A)).isEqualTo(B);
  }

  @Test
  void the_distance_to_a_chain_is_that_to_its_nearest_segment() {
    Line chain = new Line(List.of(A, B, new Vec(10, 10)));
    assertThat(SegmentGeometry.distance(chain, new Vec(13, 14))).isEqualTo(5);
    assertThat(SegmentGeometry.distance(chain, new Vec(7, 2))).isEqualTo(2);
    assertThat(SegmentGeometry.distance(new Line(List.of()), A)).isInfinite();
  }

  @Test
  void a_ring_is_cut_where_the_measure_is_nothing() {
    assertThat(SegmentGeometry.cut(SQUARE, v -> v.x() - 4))
        .containsExactly(new Vec(4, 0), B, new Vec(10, 10), new Vec(4, 10));
    assertThat(SegmentGeometry.cut(SQUARE, v -> 4 - v.x()))
        .containsExactly(A, new Vec(4, 0), new Vec(4, 10), new Vec(0, 10));
  }

  @Test
  void a_cut_keeps_a_ring_that_it_only_touches_and_leaves_nothing_of_one_beyond() {
    assertThat(SegmentGeometry.cut(SQUARE, Vec::x)).isEqualTo(SQUARE);
    assertThat(SegmentGeometry.cut(SQUARE, v -> -1 - v.x())).isEmpty();
  }

  /** On the line through (0, 1) that rises 3 in 4, the foot of (4, 4 + 5) is 4 / 5 of 6 up. */
  @Test
  void the_foot_on_an_endless_line_is_square_to_it() {
    Vec foot = SegmentGeometry.foot(new Vec(0, 1), new Vec(8, 6), new Vec(4, 9));
    assertThat(foot.x()).isCloseTo(6.4, within(1e-12));
    assertThat(foot.y()).isCloseTo(5.8, within(1e-12));
  }

  @Test
  void two_endless_lines_meet_in_one_point_unless_they_are_parallel() {
    Vec at =
        SegmentGeometry.meeting(new Vec(0, 2), new Vec(2, 0), new Vec(1, 0), new Vec(3, 3))
            .orElseThrow();
    assertThat(at.x()).isCloseTo(3, within(1e-12));
    assertThat(at.y()).isCloseTo(2, within(1e-12));
    assertThat(SegmentGeometry.meeting(A, B, new Vec(0, 5), new Vec(-4, 0))).isEmpty();
  }
}
