package slabwright.work.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
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
}
