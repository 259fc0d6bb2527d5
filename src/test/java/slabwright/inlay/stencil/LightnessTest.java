package slabwright.inlay.stencil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LightnessTest {
  /** From memory; published tables differ in the second decimal by the matrix they use. */
  @ParameterizedTest
  @CsvSource({
    "ff0000, 53.24", "00ff00, 87.73", "0000ff, 32.30",
    "ffff00, 97.14", "00ffff, 91.11", "ff00ff, 60.32"
  })
  void primaries_have_their_known_lightness(String hex, double expected) {
    assertThat(Lightness.of(Integer.parseInt(hex, 16))).isCloseTo(expected, within(0.02));
  }

  @Test
  void black_is_0_and_white_is_100() {
    assertThat(Lightness.of(0)).isZero();
    assertThat(Lightness.of(0xffffff)).isCloseTo(100, within(1e-9));
  }

  @Test
  void middle_grey_is_just_under_119_of_255() {
    assertThat(Lightness.of(0x767676)).isLessThan(50);
    assertThat(Lightness.of(0x777777)).isGreaterThan(50);
  }
}
