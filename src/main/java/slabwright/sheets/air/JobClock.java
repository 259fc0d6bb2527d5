package slabwright.sheets.air;

import java.time.LocalDateTime;
import java.util.Optional;
import slabwright.sheets.page.TimeFormat;
import slabwright.words.Words;
import slabwright.work.WorkPlan;

/**
 * Says when a minute of the job is.
 *
 * @param start minute 0; empty without a day plan
 * @param dated whether the days are real dates
 */
record JobClock(Optional<LocalDateTime> start, boolean dated, Words words) {
  static JobClock of(WorkPlan plan, Words words) {
    return new JobClock(
        plan.days().maybe().map(d -> d.firstDay().atTime(d.hours().from())), plan.dated(), words);
  }

  /** Minutes from the job's start to the first midnight after a minute. */
  double midnightAfter(double minute) {
    double offset = start.map(s -> s.toLocalTime().toSecondOfDay() / 60.0).orElse(0.0);
    return Math.ceil((minute + offset) / 1440) * 1440 - offset;
  }

  /** The day a minute lies in, or its hour where no day is known. */
  String day(double minute) {
    return start
        .map(s -> new TimeFormat(words).day(s.plusSeconds(Math.round(minute * 60)), dated))
        .orElseGet(() -> words.say("sheets.job-clock.hour", Math.round(minute / 60)));
  }

  /** When a step begins, by the next quarter hour. */
  String moment(double minute) {
    return start
        .map(s -> new TimeFormat(words).from(s.plusSeconds(Math.round(minute * 60)), dated))
        .orElseGet(() -> words.say("sheets.job-clock.minute", Math.round(minute)));
  }
}
