package slabwright.tape.leastsquares;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;
import slabwright.tape.ReadingReport;
import slabwright.units.Message;

/**
 * W. Baarda's values for data snooping (A testing procedure for use in geodetic networks, 1968,
 * from memory), against the normal distribution of a library.
 */
class BaardaValuesTest {
  /** What a standard normal variable stays under with a probability. */
  private static double quantile(double p) {
    return Math.sqrt(2) * Erf.erfInv(2 * p - 1);
  }

  @Test
  void a_standardised_residual_is_suspect_at_a_risk_of_one_in_a_thousand_both_sides() {
    assertThat(Suspect.CRITICAL).isEqualTo(3.29);
    assertThat(Suspect.CRITICAL).isCloseTo(quantile(1 - 0.001 / 2), within(0.005));
  }

  @Test
  void the_smallest_noticeable_blunder_is_found_in_four_cases_of_five() {
    ReadingReport half =
        new ReadingReport(
            0,
            Message.of("tape.misreading.one-foot-longer"),
            false,
            1000,
            1000,
            2,
            1,
            0.25,
            0,
            ReadingReport.Use.USED);
    double bound = quantile(1 - 0.001 / 2) + quantile(0.8);
    assertThat(half.noticeable()).isCloseTo(4.13 * 2 / Math.sqrt(0.25), within(0.02));
    assertThat(half.noticeable()).isCloseTo(bound * 2 / Math.sqrt(0.25), within(0.02));
  }

  @Test
  void a_blunder_is_tellable_from_redundancy_0_3_with_no_correlation_above_0_9() {
    assertThat(Suspect.LEAST_REDUNDANCY).isEqualTo(0.3);
    assertThat(Suspect.MOST_CORRELATION).isEqualTo(0.9);
  }
}
