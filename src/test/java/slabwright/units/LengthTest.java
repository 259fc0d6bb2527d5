package slabwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '~',
      value = {
        "24' 6 1/2\"; FEET_INCHES",
        "24-6 1/2; FEET_INCHES",
        "6½″; FEET_INCHES",
        "24.5 ft; FEET_INCHES",
        "7,47 m; METRIC",
        "7.47m; METRIC",
        "7470 mm; METRIC",
        "3 m - 20 mm; METRIC"
      })
  void a_length_says_in_which_system_it_was_typed(String typed, UnitSystem system) {
    assertThat(Length.parse(typed).orThrow().typedIn()).contains(system);
  }

  @Test
  void a_length_that_nobody_typed_or_that_has_no_unit_was_typed_in_no_system() {
    assertThat(Length.mm(20).typedIn()).isEmpty();
    assertThat(Length.parse("0").orThrow().typedIn()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '~',
      value = {
        "24' 6 1/2\"; 7480.3",
        "24'6-1/2\"; 7480.3",
        "24-6 1/2; 7480.3",
        "24 ft 6.5 in; 7480.3",
        "24′ 6½″; 7480.3",
        "24' 6; 7467.6",
        "24.5 ft; 7467.6",
        "6 1/2\"; 165.1",
        "1/2 in; 12.7",
        "11/16\"; 17.4625",
        "7,47 m; 7470",
        "7.47m; 7470",
        "7470 mm; 7470",
        "12' + 3' 4\"; 4673.6",
        "12'+3'4\"; 4673.6",
        "3 m - 20 mm; 2980",
        "3 m 20 cm; 3200",
        "2 yd; 1828.8",
        "-5 mm; -5",
        "0 mm; 0",
        "0; 0",
        "10 km; 10000000"
      })
  void reads_what_people_write(String text, double mm) {
    assertThat(Length.parse(text).orThrow().mm()).isCloseTo(mm, within(1e-9));
  }

  @Test
  void keeps_what_was_typed_to_the_letter() {
    assertThat(Length.parse("24′ 6½″").orThrow().typed()).isEqualTo("24′ 6½″");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '~',
      value = {
        "24; has-no-unit",
        "~~; no-length-given",
        "7,470 mm; can-be-read-two-ways",
        "abc; is-not-a-length",
        "24' abc; is-not-a-length",
        "3 in 2 ft; is-not-a-length",
        "1/0 in; is-not-a-length",
        "5 mm mm; is-not-a-length",
        "1e9 m; is-not-a-length",
        "3 m +; is-not-a-length",
        "1000001 m; longer-than-any-floor",
        "99999999999999999999' 6 1/2\"; longer-than-any-floor"
      })
  void refuses_with_a_reason_what_it_cannot_read(String text, String why) {
    assertThat(Length.parse(text)).isInstanceOf(Result.Refused.class);
    assertThat(((Result.Refused<Length>) Length.parse(text)).message().key())
        .isEqualTo("units.length-reader." + why);
  }

  /** Factors: 1 in = 25.4 mm and 1 ft = 0.3048 m exactly (NIST Handbook 44, Appendix C). */
  @Test
  void an_inch_is_25_4_mm_and_a_foot_304_8_mm_exactly() {
    assertThat(Length.parse("1 in").orThrow().mm()).isEqualTo(25.4);
    assertThat(Length.parse("1 ft").orThrow().mm()).isEqualTo(304.8);
    assertThat(QuantityFormat.SQUARE_FOOT_MM2).isCloseTo(92903.04, within(1e-9));
  }

  /** 231 in³ = 3.785 411 784 L exactly; 1 ft³ = 1728/231 gal (NIST Handbook 44, Appendix C). */
  @Test
  void a_us_gallon_is_231_cubic_inches() {
    assertThat(QuantityFormat.US_GALLON_MM3 / QuantityFormat.LITRE_MM3)
        .isCloseTo(3.785411784, within(1e-12));
    assertThat(Math.pow(304.8, 3) / QuantityFormat.US_GALLON_MM3)
        .isCloseTo(7.48051948, within(5e-9));
  }

  @Property
  void what_is_shown_in_feet_reads_back_to_the_sixteenth(
      @ForAll @IntRange(max = 10_000_000) int tenths) {
    double mm = tenths / 10.0;
    String shown = LengthFormat.show(mm, UnitSystem.FEET_INCHES);
    assertThat(Length.parse(shown).orThrow().mm()).isCloseTo(mm, within(25.4 / 32 + 1e-6));
  }

  @Property
  void what_is_shown_in_metres_reads_back_to_the_millimetre(
      @ForAll @IntRange(max = 10_000_000) int tenths) {
    double mm = tenths / 10.0;
    String shown = LengthFormat.show(mm, UnitSystem.METRIC);
    assertThat(Length.parse(shown).orThrow().mm()).isCloseTo(mm, within(0.5 + 1e-6));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "7480.3; 24′ 6 1/2″",
        "0; 0″",
        "304.8; 1′ 0″",
        "12.7; 1/2″",
        "-304.8; -1′ 0″",
        "3657.5; 12′ 0″"
      })
  void shows_feet_and_inches_to_the_sixteenth(double mm, String text) {
    assertThat(LengthFormat.show(mm, UnitSystem.FEET_INCHES)).isEqualTo(text);
  }
}
