package slabwright.work.prep;

import static org.assertj.core.api.Assertions.assertThat;
import static slabwright.work.prep.Bond.EXTRA_HARD;
import static slabwright.work.prep.Bond.EXTRA_SOFT;
import static slabwright.work.prep.Bond.HARD;
import static slabwright.work.prep.Bond.SOFT;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import slabwright.units.Message;

/** Soft concrete takes a hard bond, hard concrete a soft one (bands: a tool maker's guide). */
class BondTest {
  static Stream<Arguments> readings() {
    return Stream.of(
        Arguments.of(0.5, List.of(EXTRA_HARD)),
        Arguments.of(1.0, List.of(EXTRA_HARD)),
        Arguments.of(3.0, List.of(EXTRA_HARD)),
        Arguments.of(3.5, List.of(EXTRA_HARD, HARD)),
        Arguments.of(4.0, List.of(HARD)),
        Arguments.of(5.5, List.of(HARD, SOFT)),
        Arguments.of(6.0, List.of(SOFT)),
        Arguments.of(7.5, List.of(SOFT, EXTRA_SOFT)),
        Arguments.of(8.0, List.of(EXTRA_SOFT)),
        Arguments.of(10.0, List.of(EXTRA_SOFT)));
  }

  @ParameterizedTest
  @MethodSource("readings")
  void the_softer_the_concrete_the_harder_the_bond(double mohs, List<Bond> bonds) {
    assertThat(Bond.of(mohs)).isEqualTo(bonds);
  }

  @Test
  void two_to_try_side_by_side_are_said_together() {
    assertThat(Bond.words(List.of(HARD, SOFT)))
        .contains(
            Message.of(
                "work.bond.and",
                Message.of("work.bond.hard-bond"),
                Message.of("work.bond.soft-bond")));
    assertThat(Bond.words(List.of(EXTRA_SOFT))).contains(Message.of("work.bond.extra-soft-bond"));
    assertThat(Bond.words(List.of())).isEmpty();
  }
}
