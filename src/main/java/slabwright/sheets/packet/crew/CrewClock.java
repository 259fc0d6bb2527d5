package slabwright.sheets.packet.crew;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import slabwright.sheets.page.TimeFormat;
import slabwright.units.UnitSystem;
import slabwright.work.days.QuarterHour;
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

  private String time(LocalDateTime t) {
    return pattern(
            units == UnitSystem.FEET_INCHES
                ? words.say("sheets.crew-clock.hour-in-feet-as-java-pattern")
                : words.say("sheets.crew-clock.hour-in-meters-as-java-pattern"))
        .format(t);
  }

  /** How long something takes, in quarter hours. */
  String takes(Duration d) {
    return new TimeFormat(words).works(d);
  }

  /** The day's name, such as Thursday, Dec 10. */
  String day(CrewDay day) {
    return dated ? date(day.on()) : words.say("sheets.crew-clock.day", day.number());
  }

  String date(LocalDate day) {
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
