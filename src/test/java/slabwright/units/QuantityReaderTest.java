package slabwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** One foot is 0.3048 m (NIST SP 811, appendix B.8): 1 cfm = 60 × 0.3048³ = 1.69901 m³/h. */
class QuantityReaderTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "100; FEET_INCHES; 169.9010796",
        "100; METRIC; 100",
        "1,000 cfm; METRIC; 1699.010796",
        "100 m³/h; FEET_INCHES; 100",
        "50 l/s; FEET_INCHES; 180",
        "0; METRIC; 0"
      })
  void an_airflow_is_kept_in_cubic_metres_an_hour(String text, UnitSystem system, double kept) {
    assertThat(QuantityReader.airflow(text, system).orThrow()).isCloseTo(kept, within(1e-6));
  }

  @ParameterizedTest
  @ValueSource(strings = {"-5 cfm", "5 psi", "much", ""})
  void what_is_no_airflow_is_refused(String text) {
    assertThat(QuantityReader.airflow(text, UnitSystem.METRIC).isOk()).isFalse();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "50; FEET_INCHES; 10",
        "50; METRIC; 50",
        "-40 F; METRIC; -40",
        "22,5 °C; FEET_INCHES; 22.5"
      })
  void a_temperature_is_kept_in_degrees_celsius(String text, UnitSystem system, double kept) {
    assertThat(QuantityReader.temperature(text, system).orThrow()).isCloseTo(kept, within(1e-9));
  }
}
