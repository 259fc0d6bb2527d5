package slabwright.inlay.masking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.site.Overspray;
import slabwright.units.Length;

/**
 * Spray width 2·h·tan(θ/2) against a printed table of theoretical coverage in inches (agricultural
 * parts catalogue, p. 165, user-35215390377.cld.bz). Two cells are misprints and left out (0): 35°
 * at 24 in (printed 15.5) and 60° at 18 in (printed 20.6). The page says that actual coverage is
 * narrower.
 */
class SprayWidthTest {
  private static final double[] HEIGHTS = {8, 10, 12, 15, 18, 24, 30, 36};

  @ParameterizedTest
  @CsvSource({
    "15, 2.1 2.6 3.2 3.9 4.7 6.3 7.9 9.5",
    "20, 2.8 3.5 4.2 5.3 6.4 8.5 10.6 12.7",
    "25, 3.5 4.4 5.3 6.6 8.0 10.6 13.3 15.9",
    "30, 4.3 5.4 6.4 8.1 9.7 12.8 16.1 19.3",
    "35, 5.0 6.3 7.6 9.5 11.3 0 18.9 22.7",
    "40, 5.8 7.3 8.7 10.9 13.1 17.5 21.8 26.2",
    "45, 6.6 8.3 9.9 12.4 14.9 19.9 24.8 29.8",
    "50, 7.5 9.3 11.2 14.0 16.8 22.4 28.0 33.6",
    "55, 8.3 10.3 12.5 15.6 18.7 25.0 31.2 37.5",
    "60, 9.2 11.5 13.8 17.3 0 27.7 34.6 41.6"
  })
  void the_fan_is_as_wide_as_the_table_says(double degrees, String row) {
    String[] cells = row.split(" ", -1);
    for (int i = 0; i < HEIGHTS.length; i++) {
      double printed = Double.parseDouble(cells[i]);
      if (printed > 0) {
        assertThat(width(HEIGHTS[i], degrees)).isCloseTo(printed, within(0.12));
      }
    }
  }

  @Test
  void a_right_angled_fan_is_twice_as_wide_as_it_is_high() {
    assertThat(width(12, 90)).isCloseTo(24, within(1e-9));
  }

  @Test
  void overrun_and_drift_add_to_the_reach() {
    Overspray.Fan fan = new Overspray.Fan(Length.mm(300), 90, Length.mm(100), Length.mm(50));
    assertThat(fan.reachMm()).isCloseTo(450, within(1e-9));
  }

  private static double width(double heightIn, double degrees) {
    Overspray.Fan fan =
        new Overspray.Fan(Length.inches(heightIn), degrees, Length.ZERO, Length.ZERO);
    return 2 * fan.reachMm() / 25.4;
  }
}
