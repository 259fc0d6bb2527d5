package slabwright.work.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.site.Slab;
import slabwright.units.UnitSystem;
import slabwright.work.Said;

class DewPointPublishedTest {
  private static final UnitSystem METRIC = UnitSystem.METRIC;

  /**
   * A printed dew point table (expydoc 12113599), 50 to 95 % in steps of 5; 0 stands for a
   * misprint.
   */
  @ParameterizedTest(name = "{0} °C")
  @CsvSource({
    "10,  0.0,  1.3,  2.5,  3.7,  4.8,  5.8,  6.8,  7.7,  8.5,  9.3",
    "12,  1.8,  3.2,  4.5,  5.6,  6.7,  7.8,  8.7,  9.6, 10.5, 11.3",
    "15,  4.7,  6.1,  7.4,  8.5,  9.6, 10.7, 11.7, 12.6, 13.5, 14.4",
    "18,  7.4,  8.8, 10.1, 11.3, 12.4, 13.5, 14.6, 15.4, 16.3, 17.3",
    "20,  9.3, 10.7, 12.0, 13.2, 14.4, 15.5, 16.5, 17.4, 18.4, 19.2",
    "22, 11.2, 12.5, 13.9, 15.2, 16.3, 17.4, 18.4, 19.4, 20.3, 21.2",
    "25, 13.8, 15.4, 16.7, 18.0, 19.1, 20.2, 21.4, 22.3, 23.3, 24.2",
    "28, 16.6, 18.1, 19.4, 20.9, 22.0, 23.2, 24.2, 25.3, 26.2, 27.2",
    "30, 18.4, 20.0, 21.4, NaN , 23.9, 25.1, 26.1, 27.2, 28.2, 29.1",
  })
  void agrees_with_the_printed_table_within_a_third_of_a_degree(
      double t,
      double a,
      double b,
      double c,
      double d,
      double e,
      double f,
      double g,
      double h,
      double i,
      double j) {
    double[] printed = {a, b, c, d, e, f, g, h, i, j};
    for (int k = 0; k < printed.length; k++) {
      if (!Double.isNaN(printed[k])) {
        assertThat(DewPoint.of(t, 50 + 5 * k)).isCloseTo(printed[k], within(0.35));
      }
    }
  }

  /** The one cell the table has wrong: 23.7 printed, 22.7 meant. */
  @Test
  void the_misprint_is_a_whole_degree_off() {
    assertThat(DewPoint.of(30, 65)).isCloseTo(22.7, within(0.35));
  }

  /** A printed table of the coldest surface (maleco): 20 °C/70 % 17.4 °C, 10 °C/90 % 11.4 °C. */
  @Test
  void the_coldest_surface_is_three_degrees_over_the_dew_point() {
    assertThat(DewPoint.coldestSurface(20, 70)).isCloseTo(17.4, within(0.05));
    assertThat(DewPoint.coldestSurface(10, 90)).isCloseTo(11.4, within(0.05));
  }

  /** A printed chart: 70 °F and 65 % give 57 + 5 = 62 °F. */
  @Test
  void the_fahrenheit_rule_is_kept_apart() {
    double fahrenheit = DewPoint.coldestSurfaceFahrenheitRule((70 - 32) / 1.8, 65) * 1.8 + 32;
    assertThat(fahrenheit).isCloseTo(62, within(1.0));
    assertThat(DewPoint.coldestSurfaceFahrenheitRule(20, 70))
        .isLessThan(DewPoint.coldestSurface(20, 70));
  }

  @Test
  void between_the_two_rules_one_is_met_and_the_other_is_not() {
    double dew = DewPoint.of(20, 70);
    List<RuleNote> notes = DewPoint.notes(slab(20, 70, dew + 2.9), METRIC);
    assertThat(notes)
        .extracting(RuleNote::verdict)
        .containsExactly(RuleNote.Verdict.NOT_MET, RuleNote.Verdict.FINE);
  }

  @Test
  void humid_air_is_not_met_and_a_missing_reading_is_unknown() {
    assertThat(DewPoint.notes(slab(20, 86, 25), METRIC))
        .anyMatch(
            n ->
                Said.of(n.subject()).equals("Humidity") && n.verdict() == RuleNote.Verdict.NOT_MET);
    assertThat(DewPoint.notes(Slab.UNKNOWN, METRIC))
        .extracting(RuleNote::verdict)
        .containsExactly(RuleNote.Verdict.UNKNOWN);
  }

  private static Slab slab(double air, double humidity, double surface) {
    return new Slab(
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.empty(),
        List.of(),
        OptionalDouble.of(surface),
        OptionalDouble.of(air),
        OptionalDouble.of(humidity),
        Optional.empty());
  }
}
