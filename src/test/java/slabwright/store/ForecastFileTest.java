package slabwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.site.job.DayForecast;
import slabwright.units.Result;

class ForecastFileTest {
  @Test
  void a_heading_empty_places_fahrenheit_and_words_for_rain_are_understood() {
    List<DayForecast> days =
        ForecastFile.parse(
                """
                date, low, high, humidity, rain
                2026-12-09, 50 F, 68 °F, 60, no
                2026-12-10, 4, 12.5, , 30 %
                """)
            .orThrow();
    assertThat(days)
        .containsExactly(
            new DayForecast(LocalDate.of(2026, 12, 9), known(10), known(20), known(60), known(0)),
            new DayForecast(
                LocalDate.of(2026, 12, 10),
                known(4),
                known(12.5),
                OptionalDouble.empty(),
                known(30)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "9.12.2026,4,12,60,0 | date",
        "2026-12-09,4,12,60 | columns",
        "2026-12-09,cold,12,60,0 | no-number",
        "2026-12-09,14,12,60,0 | low-above-high",
        "2026-12-09,4,12,160,0 | outside",
        "2026-12-09,40,68,60,0 | unit",
        "2026-12-09,NaN,12,60,0 | no-number"
      })
  void a_bad_line_is_refused_in_one_sentence(String line, String why) {
    Result<List<DayForecast>> read = ForecastFile.parse("2026-12-08,4,12,60,0\n" + line + "\n");
    assertThat(((Result.Refused<List<DayForecast>>) read).message().key())
        .isEqualTo("store.forecast-file." + why);
    assertThat(((Result.Refused<List<DayForecast>>) read).message().values().get(0)).isEqualTo(2);
  }

  @Test
  void a_day_that_stands_twice_and_a_file_without_days_are_refused() {
    assertThat(ForecastFile.parse("2026-12-09,4,12,60,0\n2026-12-09,5,12,60,0\n"))
        .isInstanceOf(Result.Refused.class);
    assertThat(ForecastFile.parse("date,low,high,humidity,rain\n"))
        .isInstanceOf(Result.Refused.class);
  }

  private static OptionalDouble known(double v) {
    return OptionalDouble.of(v);
  }
}
