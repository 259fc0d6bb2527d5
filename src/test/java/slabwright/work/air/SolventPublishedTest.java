package slabwright.work.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.work.air.ExposureLimit.AveragingPeriod;

/** Published properties of acetone, CAS 67-64-1; sources in docs/references.md. */
class SolventPublishedTest {
  private static List<Long> ppm(AveragingPeriod span) {
    return Solvent.ACETONE.limits().stream()
        .filter(l -> l.span() == span)
        .map(l -> Math.round(l.share() * 1e6))
        .toList();
  }

  /** OSHA PEL 1000, NIOSH REL 250, ACGIH TLV 250 ppm. */
  @Test
  void eight_hour_limits_of_acetone_are_1000_250_and_250_ppm() {
    assertThat(ppm(AveragingPeriod.EIGHT_HOURS)).containsExactlyInAnyOrder(1000L, 250L, 250L);
  }

  @Test
  void fifteen_minute_limit_of_acetone_is_500_ppm() {
    assertThat(ppm(AveragingPeriod.FIFTEEN_MINUTES)).containsExactly(500L);
  }

  /** NIOSH sets it at a tenth of the lower explosive limit. */
  @Test
  void acetone_is_immediately_dangerous_from_2500_ppm_a_tenth_of_its_lower_explosive_limit() {
    assertThat(ppm(AveragingPeriod.DANGER)).containsExactly(2500L);
    assertThat(Solvent.ACETONE.lel() / 10 * 1e6).isCloseTo(2500, within(1e-9));
  }

  @Test
  void acetone_has_molar_mass_58_08_gravity_0_79_limit_2_5_percent_and_flash_point_minus_18() {
    assertThat(Solvent.ACETONE.molarMass()).isEqualTo(58.08);
    assertThat(Solvent.ACETONE.specificGravity()).isEqualTo(0.79);
    assertThat(Solvent.ACETONE.lel()).isEqualTo(0.025);
    assertThat(Solvent.ACETONE.flashCelsius()).isEqualTo(-18);
  }

  /** 250 and 500 ppm at 25 °C, as the OSHA chemical sampling page converts them. */
  @Test
  void acetone_of_250_ppm_is_593_9_and_of_500_ppm_1187_milligrams_a_cubic_metre() {
    assertThat(Solvent.ACETONE.milligramsPerCubicMetre(250e-6)).isCloseTo(593.9, within(0.05));
    assertThat(Solvent.ACETONE.milligramsPerCubicMetre(500e-6)).isCloseTo(1187, within(1.0));
  }

  /** NFPA 30: flash point under 100 °F. */
  @Test
  void acetone_is_a_class_one_liquid() {
    assertThat(Solvent.ACETONE.isClassOne()).isTrue();
  }

  private static Solvent flashing(double celsius) {
    return Solvent.fromDataSheet("solvent", 0.8, 60, 0.02, celsius, 100, Optional.of(200.0));
  }

  /** NFPA 30: 100 °F are 37.78 °C, 140 °F are 60 °C. */
  @Test
  void a_liquid_is_of_class_one_below_100_and_of_class_two_below_140_degrees_fahrenheit() {
    double hundred = 68 * 5 / 9.0;
    assertThat(flashing(hundred - 0.01).isClassOne()).isTrue();
    assertThat(flashing(hundred - 0.01).isClassTwo()).isFalse();
    assertThat(flashing(hundred).isClassOne()).isFalse();
    assertThat(flashing(hundred).isClassTwo()).isTrue();
    assertThat(flashing(59.99).isClassTwo()).isTrue();
    assertThat(flashing(60).isClassTwo()).isFalse();
  }

  @Test
  void a_data_sheet_gives_the_limits_of_eight_hours_and_of_a_quarter() {
    Solvent solvent = flashing(20);
    assertThat(solvent.strictest(ExposureLimit.AveragingPeriod.EIGHT_HOURS).orElseThrow().share())
        .isCloseTo(100e-6, within(1e-12));
    assertThat(
            solvent.strictest(ExposureLimit.AveragingPeriod.FIFTEEN_MINUTES).orElseThrow().share())
        .isCloseTo(200e-6, within(1e-12));
    assertThat(solvent.strictest(ExposureLimit.AveragingPeriod.DANGER)).isEmpty();
  }

  @Test
  void a_solvent_without_gravity_molar_mass_or_explosive_limit_is_none() {
    for (double[] wrong :
        new double[][] {{0, 60, 0.02}, {0.8, 0, 0.02}, {0.8, 60, 0}, {1, 60, 1}}) {
      assertThatThrownBy(() -> new Solvent("x", wrong[0], wrong[1], wrong[2], 20, List.of()))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }
}
