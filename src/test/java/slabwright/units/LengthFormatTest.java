package slabwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One inch is 25.4 mm exactly (international yard and pound agreement, 1959; NIST SP 811, B.6). */
class LengthFormatTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "0; 0″",
        "25.4; 1″",
        "12.7; 1/2″",
        "1.5875; 1/16″",
        "0.79; 0″",
        "0.8; 1/16″",
        "304.8; 1′ 0″",
        "304.1; 1′ 0″",
        "304; 11 15/16″",
        "303; 11 15/16″",
        "315.9125; 1′ 0 7/16″",
        "10679.1125; 35′ 0 7/16″",
        "7480.3; 24′ 6 1/2″",
        "-7480.3; -24′ 6 1/2″",
        "-0.5; 0″",
        "76.2; 3″"
      })
  void feet_and_inches_are_told_to_a_sixteenth(double mm, String text) {
    assertThat(LengthFormat.show(mm, UnitSystem.FEET_INCHES)).isEqualTo(text);
    assertThat(LengthFormat.show(Length.mm(mm), UnitSystem.FEET_INCHES)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "0; 0 mm",
        "470.4; 470 mm",
        "999.4; 999 mm",
        "999.5; 1.000 m",
        "7470; 7.470 m",
        "12005; 12.005 m",
        "-999; -999 mm",
        "-1000; -1.000 m",
        "-7470; -7.470 m"
      })
  void metres_are_told_to_a_millimetre(double mm, String text) {
    assertThat(LengthFormat.show(mm, UnitSystem.METRIC)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "3.175; 1/8″ (3.2 mm); 3.2 mm",
        "12; 1/2″ (12 mm); 12 mm",
        "1; 3/64″ (1 mm); 1 mm",
        "0.04; 0″ (0 mm); 0 mm"
      })
  void a_small_width_keeps_a_tenth_of_a_millimetre(double mm, String feet, String metric) {
    assertThat(LengthFormat.fine(mm, UnitSystem.FEET_INCHES)).isEqualTo(feet);
    assertThat(LengthFormat.fine(mm, UnitSystem.METRIC)).isEqualTo(metric);
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "0.0004, 0", "-0.0004, 0", "0.0005, 0.001", "1200, 1200", "1e7, 10000000"})
  void plain_millimetres_have_no_exponent_and_no_needless_zero(double mm, String text) {
    assertThat(LengthFormat.plain(mm)).isEqualTo(text);
  }

  @Test
  void a_length_is_what_was_typed_or_its_millimetres() {
    assertThat(Length.inches(2).mm()).isEqualTo(50.8);
    assertThat(Length.feet(2).mm()).isEqualTo(609.6);
    assertThat(Length.mm(2)).isLessThan(Length.inches(2));
    assertThat(Length.mm(2.5)).hasToString("2.5 mm");
    assertThat(new Length(50.8, "2 in")).hasToString("2 in");
    assertThat(new Length(50.8, "2 in").wasTyped()).isTrue();
    assertThat(Length.ZERO.wasTyped()).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "0, A",
    "1, B",
    "25, Z",
    "26, AA",
    "27, AB",
    "51, AZ",
    "52, BA",
    "701, ZZ",
    "702, AAA"
  })
  void letters_go_on_after_z(int index, String name) {
    assertThat(LetterNumbering.of(index)).isEqualTo(name);
  }
}
