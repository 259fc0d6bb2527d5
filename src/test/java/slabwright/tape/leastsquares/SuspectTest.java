package slabwright.tape.leastsquares;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tellable from a redundancy of 0.3 on and without a rival; likely when ten deviations clear. */
class SuspectTest {
  private static final LeastSquaresFit FIT = new LeastSquaresFit(new double[] {0, 0}, 0, true);

  @ParameterizedTest
  @CsvSource({
    "0.3, false, 0, true, false",
    "0.29, false, 0, false, false",
    "0.3, true, 0, false, false",
    "0.3, false, 101, true, false",
    "0.29, false, 101, false, true",
    "0.29, false, 100, false, false",
    "0.01, false, 101, false, true",
    "0.009, false, 101, false, false",
    "0.9, true, 101, false, true"
  })
  void a_suspect_is_tellable_or_else_likely(
      double redundancy, boolean rival, double margin, boolean tellable, boolean likely) {
    List<Integer> rivals = rival ? List.of(3) : List.of();
    Suspect suspect = new Suspect(1, 9_000, 12, redundancy, rivals, margin, FIT);
    assertThat(suspect.tellable()).isEqualTo(tellable);
    assertThat(suspect.likely()).isEqualTo(likely);
    assertThat(suspect.fitting(8_500).fits()).isEqualTo(8_500);
  }
}
