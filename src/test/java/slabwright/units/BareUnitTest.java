package slabwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BareUnitTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '~',
      value = {
        "FEET; 16; 4876.8",
        "FEET; 16 6; 5029.2",
        "FEET; 16 6 1/2; 5041.9",
        "FEET; 16 6½; 5041.9",
        "FEET; 16.5; 5029.2",
        "FEET; 12 + 3 4; 4673.6",
        "FEET; 12 - 1; 3352.8",
        "FEET; -3; -914.4",
        "FEET; 36\"; 914.4",
        "FEET; 5 m; 5000",
        "INCHES; 36; 914.4",
        "INCHES; 5 1/2; 139.7",
        "INCHES; 1/2; 12.7",
        "INCHES; 3 4; 1016",
        "METRES; 7.47; 7470",
        "METRES; 7,47; 7470",
        "MILLIMETRES; 900; 900",
        "MILLIMETRES; 0; 0"
      })
  void a_number_without_a_unit_has_the_one_that_its_field_states(
      BareUnit bare, String line, double mm) {
    assertThat(Length.parse(line, bare).orThrow().mm()).isCloseTo(mm, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '~',
      value = {
        "FEET; 5 1/2",
        "FEET; 1/2",
        "FEET; 16 14",
        "FEET; 7,470",
        "METRES; 5 1/2",
        "METRES; 16 6",
        "FEET; x",
        "FEET; 16 6 6",
        "FEET; ~~"
      })
  void a_line_that_could_mean_two_lengths_is_asked_about(BareUnit bare, String line) {
    assertThat(Length.parse(line, bare).isOk()).isFalse();
  }

  @Test
  void what_is_kept_as_typed_can_be_read_without_its_field() {
    Length kept = Length.parse("16 6 1/2", BareUnit.FEET).orThrow();
    assertThat(kept.typed()).isEqualTo("16' 6 1/2\"");
    assertThat(Length.parse(kept.typed()).orThrow()).isEqualTo(kept);
  }

  @Test
  void temperatures_and_airflows_are_read_in_both_systems_everywhere() {
    for (UnitSystem system : UnitSystem.values()) {
      assertThat(QuantityReader.temperature("72 F", system).orThrow())
          .isCloseTo(200.0 / 9, within(1e-9));
      assertThat(QuantityReader.temperature("22 °C", system).orThrow()).isEqualTo(22);
      assertThat(QuantityReader.airflow("1,400 m³/h", system).orThrow()).isEqualTo(1400);
      assertThat(QuantityReader.airflow("100 cfm", system).orThrow())
          .isCloseTo(169.901, within(0.001));
      assertThat(QuantityReader.temperature("warm", system).isOk()).isFalse();
      assertThat(QuantityReader.airflow("-3", system).isOk()).isFalse();
    }
    assertThat(QuantityReader.temperature("-4", UnitSystem.METRIC).orThrow()).isEqualTo(-4);
    assertThat(QuantityReader.temperature("32", UnitSystem.FEET_INCHES).orThrow()).isZero();
    assertThat(QuantityReader.airflow("60", UnitSystem.METRIC).orThrow()).isEqualTo(60);
  }
}
