package slabwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LabTest {
  /** CIE L*a*b* (D65) of the sRGB corners, as commonly tabulated to two digits; from memory. */
  @ParameterizedTest
  @CsvSource({
    "#000000,0,0,0",
    "#ffffff,100,0,0",
    "#ff0000,53.24,80.09,67.20",
    "#00ff00,87.73,-86.18,83.18",
    "#0000ff,32.30,79.19,-107.86",
    "#808080,53.59,0,0"
  })
  void corners_of_srgb(String hex, double l, double a, double b) {
    CieLab lab = CieLab.ofHex(hex);
    assertThat(lab.l()).isCloseTo(l, within(0.02));
    assertThat(lab.a()).isCloseTo(a, within(0.03));
    assertThat(lab.b()).isCloseTo(b, within(0.03));
  }

  /** From memory; published tables differ in the second decimal by the matrix they use. */
  @ParameterizedTest
  @CsvSource({"#ffff00, 97.14", "#00ffff, 91.11", "#ff00ff, 60.32"})
  void secondaries_have_their_known_lightness(String hex, double expected) {
    assertThat(CieLab.ofHex(hex).l()).isCloseTo(expected, within(0.02));
  }

  @Test
  void middle_grey_is_just_under_119_of_255() {
    assertThat(CieLab.ofHex("#767676").l()).isLessThan(50);
    assertThat(CieLab.ofHex("#777777").l()).isGreaterThan(50);
  }

  @Test
  void black_and_white_are_a_hundred_apart() {
    assertThat(CieLab.ofHex("#000000").deltaE(CieLab.ofHex("#ffffff")))
        .isCloseTo(100, within(0.01));
  }
}
