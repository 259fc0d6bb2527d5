package slabwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One avoirdupois pound is 0.45359237 kg and has 16 oz: NIST Handbook 44, appendix C. */
class WeighedMassTest {
  private static final UnitSystem FEET = UnitSystem.FEET_INCHES;
  private static final UnitSystem METRIC = UnitSystem.METRIC;

  @ParameterizedTest
  @CsvSource({
    "0.226796185, 8.0 oz, 227 g",
    "0.4521, 15.9 oz, 452 g",
    "0.4523, 1.00 lb, 452 g",
    "0.9994, 2.20 lb, 999 g",
    "0.9996, 2.20 lb, 1.00 kg",
    "2.346, 5.17 lb, 2.35 kg",
    "-0.1, -3.5 oz, -100 g",
    "0, 0.0 oz, 0 g"
  })
  void a_crew_weighs_ounces_below_a_pound_and_grams_below_a_kilogram(
      double kg, String feet, String metric) {
    assertThat(RateFormat.weighed(kg, FEET)).isEqualTo(feet);
    assertThat(RateFormat.weighed(kg, METRIC)).isEqualTo(metric);
  }

  @ParameterizedTest
  @CsvSource({
    "0.1231, 0.124",
    "0.123, 0.123",
    "0.9994, 1.000",
    "0.9996, 1.00",
    "1.231, 1.24",
    "1.24, 1.24"
  })
  void a_mass_to_weigh_out_is_rounded_up_to_a_gram_and_over_a_kilogram_to_ten(
      double kg, double up) {
    assertThat(RateFormat.weighedUp(kg, METRIC)).isCloseTo(up, within(1e-12));
  }

  /** 1.6 oz, 1.7 oz; 4.41 lb; 15.97 oz is weighed as a pound. */
  @ParameterizedTest
  @CsvSource({
    "0.045359237, 1.6, 16",
    "0.0454, 1.7, 16",
    "2.0, 4.41, 1",
    "0.4521, 16.0, 16",
    "0.45274, 1.0, 1",
    "0.4581, 1.01, 1"
  })
  void a_mass_to_weigh_out_is_rounded_up_to_a_tenth_of_an_ounce_or_a_hundredth_of_a_pound(
      double kg, double many, double inAPound) {
    assertThat(RateFormat.weighedUp(kg, FEET))
        .isCloseTo(many / inAPound * 0.45359237, within(1e-12));
  }
}
