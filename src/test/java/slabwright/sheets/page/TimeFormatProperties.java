package slabwright.sheets.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import slabwright.units.QuarterHour;
import slabwright.words.Words;
import slabwright.work.days.TimeSpan;

class TimeFormatProperties {
  private static final LocalDateTime DAY = LocalDate.of(2027, 3, 1).atStartOfDay();
  private static final TimeFormat PRINTED = new TimeFormat(Words.english());

  @Property
  void a_deadline_is_told_no_later_and_less_than_a_quarter_early(
      @ForAll @LongRange(min = 0, max = 10_000_000) long seconds) {
    LocalDateTime exact = DAY.plusSeconds(seconds);
    LocalDateTime told = QuarterHour.down(exact);
    assertThat(told).isBeforeOrEqualTo(exact).isAfter(exact.minusMinutes(15));
    assertThat(told.getMinute() % 15 + told.getSecond()).isZero();
    assertThat(PRINTED.until(exact, true)).isEqualTo(PRINTED.moment(told, true));
  }

  @Property
  void what_is_waited_for_is_told_no_earlier_and_less_than_a_quarter_late(
      @ForAll @LongRange(min = 0, max = 10_000_000) long seconds) {
    LocalDateTime exact = DAY.plusSeconds(seconds);
    LocalDateTime told = QuarterHour.up(exact);
    assertThat(told).isAfterOrEqualTo(exact).isBefore(exact.plusMinutes(15));
    assertThat(told.getMinute() % 15 + told.getSecond()).isZero();
    assertThat(PRINTED.from(exact, true)).isEqualTo(PRINTED.moment(told, true));
  }

  @Property
  void a_wait_is_told_no_shorter_and_less_than_a_quarter_longer(
      @ForAll @LongRange(min = 0, max = 10_000_000) long seconds) {
    Duration exact = Duration.ofSeconds(seconds);
    Duration told = QuarterHour.up(exact);
    assertThat(told).isGreaterThanOrEqualTo(exact).isLessThan(exact.plusMinutes(15));
    assertThat(told.toSeconds() % 900).isZero();
    assertThat(PRINTED.wait(exact)).isEqualTo(PRINTED.days(told));
  }

  @Property
  void a_working_time_is_told_to_the_nearest_quarter_but_never_as_none(
      @ForAll @LongRange(min = 1, max = 10_000_000) long seconds) {
    long told = QuarterHour.nearest(Duration.ofSeconds(seconds)).toSeconds();
    assertThat(told % 900).isZero();
    assertThat(told).isPositive();
    assertThat(Math.abs(told - seconds)).isLessThanOrEqualTo(seconds < 450 ? 900 : 450);
  }

  @Property
  void people_are_told_to_stay_out_no_shorter_than_they_must(
      @ForAll @LongRange(min = 0, max = 100_000) long from,
      @ForAll @LongRange(min = 0, max = 100_000) long length) {
    TimeSpan exact = new TimeSpan(DAY.plusSeconds(from), DAY.plusSeconds(from + length));
    TimeSpan told = exact.toldAsShut();
    assertThat(told.start()).isBeforeOrEqualTo(exact.start());
    assertThat(told.end()).isAfterOrEqualTo(exact.end());
  }

  @Property
  void work_is_never_told_as_taking_no_time(
      @ForAll @LongRange(min = 0, max = 100_000) long from,
      @ForAll @LongRange(min = 1, max = 100_000) long length) {
    TimeSpan told =
        new TimeSpan(DAY.plusSeconds(from), DAY.plusSeconds(from + length)).toldAsWork();
    assertThat(told.length()).isGreaterThanOrEqualTo(QuarterHour.STEP);
  }
}
