package slabwright.inlay.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.shape.Line;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** A square of 10 mm whose sides a shop's program wrote one by one. */
class RingJoinerTest {
  private static final Vec A = new Vec(0, 0);
  private static final Vec B = new Vec(10, 0);
  private static final Vec C = new Vec(10, 10);
  private static final Vec D = new Vec(0, 10);

  private static List<Ring> rings(Line... lines) {
    return RingJoiner.rings(List.of(lines), List.of());
  }

  private static void isSquare(List<Ring> rings) {
    assertThat(rings).hasSize(1);
    assertThat(Math.abs(rings.get(0).signedArea())).isCloseTo(100, within(2.0));
  }

  @Test
  void sides_in_any_order_and_either_direction_make_a_ring() {
    isSquare(rings(Line.of(A, B), Line.of(C, D), Line.of(B, C), Line.of(D, A)));
    isSquare(rings(Line.of(A, B), Line.of(D, C), Line.of(C, B), Line.of(A, D)));
    isSquare(rings(Line.of(A, B, C), Line.of(A, D, C)));
    isSquare(rings(Line.of(A, B, C, D, A)));
  }

  @Test
  void ends_a_tenth_of_a_millimetre_apart_meet_and_farther_ones_do_not() {
    isSquare(rings(Line.of(A, B, C), Line.of(C.plus(new Vec(0, 0.1)), D, A)));
    assertThat(rings(Line.of(A, B, C), Line.of(C.plus(new Vec(0, 0.11)), D, A))).isEmpty();
    assertThat(rings(Line.of(A, B, C, D))).isEmpty();
  }

  @Test
  void two_shapes_are_two_rings_and_a_side_too_many_is_left_out() {
    Vec far = new Vec(100, 0);
    List<Ring> rings =
        rings(
            Line.of(A, B, C),
            Line.of(A.plus(far), B.plus(far), C.plus(far)),
            Line.of(new Vec(50, 50), new Vec(60, 60)),
            Line.of(C, D, A),
            Line.of(C.plus(far), A.plus(far)));
    assertThat(rings)
        .extracting(r -> Math.abs(r.signedArea()))
        .containsExactlyInAnyOrder(100.0, 50.0);
  }

  /** The panel's own edge runs where the square's right side should. */
  @Test
  void a_side_that_lies_on_another_outline_is_taken_from_there() {
    List<Line> open = List.of(Line.of(C, D), Line.of(D, A, B));
    assertThat(RingJoiner.rings(open, List.of())).isEmpty();
    isSquare(RingJoiner.rings(open, List.of(Ring.rectangle(10, -20, 60, 30))));
    assertThat(RingJoiner.rings(open, List.of(Ring.rectangle(10, 3, 60, 30)))).isEmpty();
    assertThat(RingJoiner.rings(open, List.of(Ring.rectangle(10.2, -20, 60, 30)))).isEmpty();
  }

  @Test
  void of_two_openings_along_one_edge_each_closes_over_its_own_side() {
    Vec up = new Vec(0, 40);
    List<Line> open =
        List.of(Line.of(B, A, D, C), Line.of(B.plus(up), A.plus(up), D.plus(up), C.plus(up)));
    List<Ring> edge = List.of(Ring.rectangle(10, -20, 60, 90));
    assertThat(RingJoiner.rings(open, edge))
        .extracting(r -> Math.abs(r.signedArea()))
        .containsExactly(100.0, 100.0);
    assertThat(RingJoiner.rings(List.of(open.get(1), open.get(0)), edge)).hasSize(2);
  }

  @Test
  void a_point_and_a_way_there_and_back_make_none() {
    assertThat(rings(Line.of(A))).isEmpty();
    assertThat(rings(Line.of(A, B))).isEmpty();
    assertThat(rings()).isEmpty();
  }
}
