package slabwright.shape.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.shape.FillRule;
import slabwright.shape.Layer;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

class RingValidatorTest {
  private static final Ring SQUARE = Ring.rectangle(0, 0, 10, 10);

  @Test
  void a_plain_square_needs_no_repair() {
    assertThat(notes(SQUARE)).isEmpty();
  }

  @Test
  void a_bow_tie_crosses_itself_in_its_middle() {
    assertThat(notes(Ring.of(0, 0, 10, 10, 10, 0, 0, 10)))
        .containsExactly(new RingFault(RingFault.Kind.CROSSES_ITSELF, 4, 0, new Vec(5, 5)));
  }

  @Test
  void a_ring_drawn_again_from_another_corner_and_backwards_is_repeated() {
    assertThat(notes(SQUARE, Ring.of(10, 10, 10, 0, 0, 0, 0, 10)))
        .extracting(RingFault::kind, RingFault::ring)
        .containsExactly(tuple(RingFault.Kind.REPEATED, 1));
  }

  @Test
  void a_sliver_thinner_than_the_grid_has_no_area() {
    assertThat(notes(Ring.of(0, 0, 10, 0, 5, 0.0002)))
        .extracting(RingFault::kind)
        .containsExactly(RingFault.Kind.NO_AREA);
  }

  private static List<RingFault> notes(Ring... rings) {
    return RingValidator.of(List.of(new Layer(4, List.of(rings), FillRule.NONZERO)));
  }
}
