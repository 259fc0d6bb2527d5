package slabwright.work.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.units.Result;

/** Factors of NIST SP 811 (2008), appendix B.8, and NIST Handbook 44, appendix C. */
class BookDimensionTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "LENGTH; 8 in; 203.2",
        "VOLUME; 1 gal; 3785411.784",
        "VOLUME; 1 qt; 946352.946",
        "VOLUME; 1 fl oz; 29573.5295625",
        "VOLUME; 2.5 L; 2500000",
        "VOLUME; 250 ml; 250000",
        "MASS; 40 lb; 18.1436948",
        "MASS; 8 oz; 0.226796185",
        "MASS; 2 kg; 2",
        "MASS; 500 g; 0.5",
        "TIME; 4 h; 240",
        "TIME; 15 min; 15",
        "TIME; 2 d; 2880",
        "TEMPERATURE; 50 F; 10",
        "TEMPERATURE; -40 °F; -40",
        "TEMPERATURE; 21.5 C; 21.5",
        "COVERAGE; 300 ft2/gal; 7.362716024",
        "COVERAGE; 8 m²/L; 8",
        "AREA; 4000 sq ft; 371612160",
        "AREA; 2 m2; 2000000",
        "AREA_RATE; 250 ft2/h; 23225760",
        "AREA_RATE; 20 m2/h; 20000000",
        "RUN_RATE; 40 ft/h; 12192",
        "RUN_RATE; 12 m/h; 12000",
        "AIRFLOW; 2000 cfm; 56.633693184",
        "AIRFLOW; 3600 m³/h; 60",
        "AIRFLOW; 50 l/s; 3",
        "SHARE; 10 %; 0.1",
        "PPM; 250 ppm; 250",
        "MOLAR_MASS; 58.08 g/mol; 58.08",
        "NUMBER; 3; 3"
      })
  void a_value_is_kept_in_the_programs_unit(BookDimension kind, String text, double kept) {
    assertThat(kind.read(text).orThrow()).isCloseTo(kept, within(Math.abs(kept) * 1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "MASS_PER_AREA, 200 g/m2, 2e-7",
    "MASS_PER_AREA, 0.2 kg/m2, 2e-7",
    "MASS_PER_AREA, 1 lb/ft2, 4.882427636383e-6",
    "MASS_PER_VOLUME, 3.5 oz/gal, 2.621203097557e-8",
    "MASS_PER_VOLUME, 30 g/l, 3e-8",
    "MASS_PER_VOLUME, 1.2 kg/l, 1.2e-6"
  })
  void a_mass_is_kept_for_each_square_or_cubic_millimetre(
      BookDimension kind, String text, double kept) {
    assertThat(kind.read(text).orThrow()).isCloseTo(kept, within(kept * 1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "LENGTH, 0 in",
    "VOLUME, 0 gal",
    "COVERAGE, 0 m2/l",
    "AREA, 0 m2",
    "AREA_RATE, 0 ft2/h",
    "RUN_RATE, 0 m/h",
    "PPM, 0 ppm",
    "MOLAR_MASS, 0 g/mol",
    "NUMBER, 0",
    "TIME, -1 min",
    "MASS, -1 kg",
    "SHARE, -1 %",
    "SHARE, 100 %"
  })
  void what_makes_no_sense_is_out_of_range(BookDimension kind, String text) {
    assertThat(refusal(kind, text)).isEqualTo("work.book-dimension.is-out-of-range-write");
  }

  @ParameterizedTest
  @CsvSource({"TIME, 0 min", "MASS, 0 kg", "SHARE, 0 %", "AIRFLOW, 0 cfm", "MASS_PER_AREA, 0 g/m2"})
  void nothing_is_a_value_where_nothing_may_be(BookDimension kind, String text) {
    assertThat(kind.read(text).orThrow()).isZero();
  }

  @ParameterizedTest
  @CsvSource({
    "LENGTH, far",
    "VOLUME, 4 ft",
    "VOLUME, gal",
    "TEMPERATURE, 70 K",
    "TEMPERATURE, warm",
    "NUMBER, 3 in"
  })
  void another_unit_or_no_number_cant_be_read(BookDimension kind, String text) {
    assertThat(refusal(kind, text)).isEqualTo("work.book-dimension.cant-be-read-write-for");
  }

  private static String refusal(BookDimension kind, String text) {
    return ((Result.Refused<Double>) kind.read(text)).message().key();
  }
}
