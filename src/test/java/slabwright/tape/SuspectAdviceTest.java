package slabwright.tape;

import static org.assertj.core.api.Assertions.assertThat;
import static slabwright.tape.AdjustmentFixtures.and;
import static slabwright.tape.AdjustmentFixtures.kinds;
import static slabwright.tape.AdjustmentFixtures.sentences;

import org.junit.jupiter.api.Test;

/** A room of 10 by 10 m with a corner of 4 by 6 m cut out of it, taped to the millimetre. */
class SuspectAdviceTest {
  private static final String[] ROOM = {
    "wall 10 m left",
    "wall 6 m left",
    "wall 4 m right",
    "wall 4 m left",
    "wall 6 m left",
    "wall 10 m left",
    "diagonal B D 7.211 m",
    "diagonal B E 10.770 m",
    "diagonal C F 10.770 m",
    "diagonal A D 8.485 m",
    "diagonal C E 5.657 m"
  };

  private static final String[] WELL_CHECKED =
      and(ROOM, "diagonal D F 7.211 m", "diagonal A E 11.662 m");

  @Test
  void a_room_that_fits_has_nothing_to_measure_again() {
    assertThat(sentences(WELL_CHECKED)).isEmpty();
  }

  /** From A (0, 0) to C (10, 6) are 11.662 m. */
  @Test
  void a_slip_of_a_metre_is_left_out_and_explained() {
    assertThat(sentences(and(WELL_CHECKED, "diagonal A C 12.662 m")))
        .containsExactly(
            "Measure diagonal A C again: 12.662 m does not fit, the others say 11.662 m (it would"
                + " fit one meter shorter). It is left out until then.");
  }

  @Test
  void what_no_slip_explains_is_left_out_without_a_reason() {
    assertThat(sentences(and(WELL_CHECKED, "diagonal A C 12.300 m")))
        .containsExactly(
            "Measure diagonal A C again: 12.300 m does not fit, the others say 11.662 m. It is"
                + " left out until then.");
  }

  @Test
  void a_reading_a_little_off_may_be_any_of_several_and_a_diagonal_would_tell() {
    String[] little = and(ROOM, "diagonal A C 11.690 m");
    assertThat(kinds(little)).containsExactly(TapeAdvice.Kind.CANNOT_TELL);
    assertThat(sentences(little).get(0))
        .startsWith("Something does not fit, and the readings cannot tell between diagonal A C")
        .contains("or tape the diagonal D to F.");
  }

  @Test
  void where_every_diagonal_is_taped_none_is_asked_for() {
    assertThat(sentences(and(WELL_CHECKED, "diagonal A C 11.690 m")))
        .singleElement()
        .asString()
        .endsWith("measure them again.");
  }
}
