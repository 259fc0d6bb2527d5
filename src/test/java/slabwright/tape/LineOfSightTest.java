package slabwright.tape;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A room like a U, 9 by 6 m, its corners 0 to 7 from the lower left: a block 3 m wide and 4 m deep
 * comes down from above between 3 and 6 m.
 */
class LineOfSightTest {
  private static final LineOfSight ROOM =
      new LineOfSight(new double[] {0, 0, 9, 0, 9, 6, 6, 6, 6, 2, 3, 2, 3, 6, 0, 6});

  @ParameterizedTest
  @CsvSource({
    "0, 4, true",
    "0, 5, true",
    "1, 5, true",
    "7, 5, true",
    "0, 6, true",
    "1, 3, true",
    "0, 2, false",
    "7, 2, false",
    "6, 3, false",
    "7, 1, false",
    "6, 4, false",
    "5, 3, false",
    "5, 2, false"
  })
  void a_tape_runs_where_no_wall_stands_between(int a, int b, boolean clear) {
    assertThat(ROOM.isClear(a, b)).isEqualTo(clear);
    assertThat(ROOM.isClear(b, a)).isEqualTo(clear);
  }

  @ParameterizedTest
  @CsvSource({"0, 3, 1, 7, true", "0, 4, 1, 5, true", "0, 1, 7, 2, false", "0, 4, 4, 2, false"})
  void two_tapes_cross_in_a_point_inside_both(int a, int b, int c, int d, boolean cross) {
    assertThat(ROOM.crosses(a, b, c, d)).isEqualTo(cross);
  }

  /** A band bent like a roof, its corners 0 to 5: all its long walls lie aslant. */
  @ParameterizedTest
  @CsvSource({
    "0, 2, false",
    "5, 3, false",
    "1, 4, true",
    "0, 4, true",
    "2, 4, true",
    "1, 5, true",
    "1, 3, true"
  })
  void aslant_walls_count_where_they_are_at_the_tapes_height(int a, int b, boolean clear) {
    LineOfSight roof = new LineOfSight(new double[] {0, 0, 5, 5, 10, 0, 11, 2, 5, 8, -1, 2});
    assertThat(roof.isClear(a, b)).isEqualTo(clear);
    assertThat(roof.isClear(b, a)).isEqualTo(clear);
  }

  /** A notch from above, down to corner 3, between a high corner and a low one. */
  @ParameterizedTest
  @CsvSource({"2, 4, false", "4, 1, false", "2, 0, false", "0, 3, true", "1, 3, true"})
  void over_a_notch_there_is_no_floor_to_lay_a_tape_on(int a, int b, boolean clear) {
    LineOfSight notched = new LineOfSight(new double[] {0, 0, 10, 0, 10, 12, 5, 2, 0, 6});
    assertThat(notched.isClear(a, b)).isEqualTo(clear);
    assertThat(notched.isClear(b, a)).isEqualTo(clear);
  }
}
