package slabwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Factors of NIST SP 811 (2008), appendix B.8, and NIST Handbook 44, appendix C. */
class QuantityFormatTest {
  private static final UnitSystem FEET = UnitSystem.FEET_INCHES;
  private static final UnitSystem METRIC = UnitSystem.METRIC;

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "92903.04; 1.0 sq ft; 1 sq ft; 0.09 m²; 0.1 m²",
        "464515200; 5,000.0 sq ft; 5,000 sq ft; 464.52 m²; 464.5 m²",
        "1000000; 10.8 sq ft; 11 sq ft; 1.00 m²; 1.0 m²"
      })
  void an_area_is_shown_exactly_and_as_one_speaks_of_it(
      double mm2, String feet, String wholeFeet, String metric, String wholeMetric) {
    assertThat(QuantityFormat.area(mm2, FEET)).isEqualTo(feet);
    assertThat(QuantityFormat.wholeArea(mm2, FEET)).isEqualTo(wholeFeet);
    assertThat(QuantityFormat.area(mm2, METRIC)).isEqualTo(metric);
    assertThat(QuantityFormat.wholeArea(mm2, METRIC)).isEqualTo(wholeMetric);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "99.9; 0.155 sq in; 99.9 mm²",
        "100; 0.155 sq in; 1.0 cm²",
        "645.16; 1.0 sq in; 6.5 cm²",
        "645; 1.000 sq in; 6.5 cm²",
        "1000; 1.6 sq in; 10 cm²",
        "64516; 100.0 sq in; 645 cm²"
      })
  void a_small_area_changes_its_unit_with_its_size(double mm2, String feet, String metric) {
    assertThat(QuantityFormat.smallArea(mm2, FEET)).isEqualTo(feet);
    assertThat(QuantityFormat.smallArea(mm2, METRIC)).isEqualTo(metric);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "304.8; 1.0 ft; 0.30 m",
        "22860; 75.0 ft; 22.86 m",
        "1000000; 3,280.8 ft; 1,000.00 m"
      })
  void a_running_length_is_in_feet_or_metres(double mm, String feet, String metric) {
    assertThat(QuantityFormat.run(mm, FEET)).isEqualTo(feet);
    assertThat(QuantityFormat.run(mm, METRIC)).isEqualTo(metric);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "3785411.784; 1.00 gal; 3.79 L",
        "946352.946; 0.25 gal; 946 mL",
        "946352.9; 32.0 fl oz; 946 mL",
        "999999; 0.26 gal; 1,000 mL",
        "1000000; 0.26 gal; 1.00 L",
        "29573.52956; 1.0 fl oz; 30 mL",
        "-29573.52956; -1.0 fl oz; -30 mL",
        "-3785411.784; -1.00 gal; -3.79 L"
      })
  void a_volume_changes_its_unit_with_its_size(double mm3, String feet, String metric) {
    assertThat(QuantityFormat.volume(mm3, FEET)).isEqualTo(feet);
    assertThat(QuantityFormat.volume(mm3, METRIC)).isEqualTo(metric);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "0; 32 °F; 0 °C",
        "100; 212 °F; 100 °C",
        "-40; -40 °F; -40 °C",
        "21.4; 71 °F; 21 °C"
      })
  void a_temperature_is_in_whole_degrees(double celsius, String feet, String metric) {
    assertThat(QuantityFormat.temperature(celsius, FEET)).isEqualTo(feet);
    assertThat(QuantityFormat.temperature(celsius, METRIC)).isEqualTo(metric);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {"-0.04; 1; 0.0", "-0.06; 1; -0.1", "-0.4; 0; 0", "1234567.891; 2; 1,234,567.89"})
  void a_number_that_rounds_to_nothing_has_no_sign(double value, int decimals, String text) {
    assertThat(QuantityFormat.number(value, decimals)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {"1; 41 sq ft/gal; 1.0 m²/L", "7.363; 300 sq ft/gal; 7.4 m²/L"})
  void a_coverage_is_area_by_volume(double squareMetresPerLitre, String feet, String metric) {
    assertThat(RateFormat.coverage(squareMetresPerLitre, FEET)).isEqualTo(feet);
    assertThat(RateFormat.coverage(squareMetresPerLitre, METRIC)).isEqualTo(metric);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {"0.0254; 1.0 mil; 25 µm", "0.1; 3.9 mil; 100 µm"})
  void a_film_is_in_mils_or_micrometres(double mm, String feet, String metric) {
    assertThat(RateFormat.film(mm, FEET)).isEqualTo(feet);
    assertThat(RateFormat.film(mm, METRIC)).isEqualTo(metric);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {"28.316846592; 1,000 cfm; 1,699 m³/h", "1; 35 cfm; 60 m³/h"})
  void an_airflow_a_minute_is_told_in_cfm_or_by_the_hour(double m3, String feet, String metric) {
    assertThat(RateFormat.airflow(m3, FEET)).isEqualTo(feet);
    assertThat(RateFormat.airflow(m3, METRIC)).isEqualTo(metric);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {"0.45359237; 1.0 lb; 0.5 kg", "100; 220.5 lb; 100.0 kg"})
  void a_mass_is_in_pounds_or_kilograms(double kg, String feet, String metric) {
    assertThat(RateFormat.mass(kg, FEET)).isEqualTo(feet);
    assertThat(RateFormat.mass(kg, METRIC)).isEqualTo(metric);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {"929030400; 10,000.0 sq ft/h; 929.03 m²/h"})
  void a_work_rate_is_an_area_an_hour(double mm2, String feet, String metric) {
    assertThat(RateFormat.areaRate(mm2, FEET)).isEqualTo(feet);
    assertThat(RateFormat.areaRate(mm2, METRIC)).isEqualTo(metric);
  }
}
