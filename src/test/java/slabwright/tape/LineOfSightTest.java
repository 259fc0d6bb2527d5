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
}
