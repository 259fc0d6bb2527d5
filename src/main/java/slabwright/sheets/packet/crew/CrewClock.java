package slabwright.sheets.packet.crew;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import slabwright.sheets.page.TimeFormat;
import slabwright.units.QuarterHour;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/**
 * Days and hours as the crew says them.
 *
 * @param dated whether days are real dates; else they are counted
 */
record CrewClock(UnitSystem units, Words words, boolean dated) {
  private static final int BATCH_MINUTES = 5;

  /** A clock time in quarter hours. */
  String at(LocalDateTime t) {
    return time(QuarterHour.up(t));
  }

  /** A deadline: never later than it is. */
  String before(LocalDateTime t) {
    return time(QuarterHour.down(t));
  }

  /** A clock time of a batch, to five minutes: its working time is short. */
  String batch(LocalDateTime t) {
    long past = Math.round(t.getMinute() / (double) BATCH_MINUTES) * BATCH_MINUTES;
    return time(t.withMinute(0).withSecond(0).withNano(0).plusMinutes(past));
  }

  /** When something is over that may fall into the night. */
  String atAnyHour(LocalDateTime t) {
    return anyHour(QuarterHour.up(t));
  }

  /** A deadline that may fall into the night. */
  String beforeAnyHour(LocalDateTime t) {
    return anyHour(QuarterHour.down(t));
  }

  private String time(LocalDateTime t) {
    return pattern(
            units == UnitSystem.FEET_INCHES
                ? words.say("sheets.crew-clock.hour-in-feet-as-java-pattern")
                : words.say("sheets.crew-clock.hour-in-meters-as-java-pattern"))
        .format(t);
  }

  private String anyHour(LocalDateTime t) {
    return pattern(
            units == UnitSystem.FEET_INCHES
                ? words.say("sheets.crew-clock.any-hour-in-feet-as-java-pattern")
                : words.say("sheets.crew-clock.hour-in-meters-as-java-pattern"))
        .format(t)
        .replace(' ', '\u00a0');
  }

  /** How long something takes, in quarter hours. */
  String takes(Duration d) {
    return new TimeFormat(words).works(d);
  }

  /** The day's name, such as Thursday, Dec 10. */
  String day(CrewDay day) {
    return date(day.on().atStartOfDay());
  }

  /** The day of a moment; counted from the first day of the plan where it has no dates. */
  String date(LocalDateTime t) {
    return dated ? named(t.toLocalDate()) : words.say("sheets.crew-clock.day", t.getDayOfMonth());
  }

  private String named(LocalDate day) {
    return pattern(
            units == UnitSystem.FEET_INCHES
                ? words.say("sheets.crew-clock.day-in-feet-as-java-pattern")
                : words.say("sheets.crew-clock.day-in-meters-as-java-pattern"))
        .format(day);
  }

  private DateTimeFormatter pattern(String pattern) {
    return DateTimeFormatter.ofPattern(pattern, words.locale());
  }
}
