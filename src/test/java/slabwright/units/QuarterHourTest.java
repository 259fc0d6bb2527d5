package slabwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDateTime;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuarterHourTest {
  @ParameterizedTest
  @CsvSource({
    "2027-03-04T07:30, 2027-03-04T07:30, 2027-03-04T07:30",
    "2027-03-04T07:31, 2027-03-04T07:45, 2027-03-04T07:30",
    "2027-03-04T07:44:59, 2027-03-04T07:45, 2027-03-04T07:30",
    "2027-03-04T23:50, 2027-03-05T00:00, 2027-03-04T23:45"
  })
  void what_is_waited_for_is_told_late_and_a_deadline_early(
      LocalDateTime t, LocalDateTime up, LocalDateTime down) {
    assertThat(QuarterHour.up(t)).isEqualTo(up);
    assertThat(QuarterHour.down(t)).isEqualTo(down);
  }

  @ParameterizedTest
  @CsvSource({
    "PT0S, PT0S, PT0S, PT0S",
    "PT1S, PT15M, PT0S, PT15M",
    "PT7M29S, PT15M, PT0S, PT15M",
    "PT15M, PT15M, PT15M, PT15M",
    "PT22M29S, PT30M, PT15M, PT15M",
    "PT22M30S, PT30M, PT15M, PT30M",
    "PT61M, PT75M, PT60M, PT60M"
  })
  void a_length_of_time_is_told_in_quarters_and_no_work_takes_none(
      Duration d, Duration up, Duration down, Duration nearest) {
    assertThat(QuarterHour.up(d)).isEqualTo(up);
    assertThat(QuarterHour.down(d)).isEqualTo(down);
    assertThat(QuarterHour.nearest(d)).isEqualTo(nearest);
  }
}
