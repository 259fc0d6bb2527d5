package slabwright.sheets.page;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import slabwright.units.QuarterHour;
import slabwright.words.Words;

/**
 * Days, moments and lengths of time as sheets, crew pages and their phone page show them: the one
 * clock, 12 or 24 hours by the language.
 */
public record TimeFormat(Words words) {
  private static final int FIVE_MINUTES = 5;

  /** When something may begin, or is over: by the next quarter hour. */
  public String from(LocalDateTime t, boolean dated) {
    return moment(QuarterHour.up(t), dated);
  }

  /** The last moment of something: by the quarter hour before. */
  public String until(LocalDateTime t, boolean dated) {
    return moment(QuarterHour.down(t), dated);
  }

  /** A working time to the nearest quarter hour. */
  public String works(Duration d) {
    return duration(QuarterHour.nearest(d));
  }

  /** A wait or a delay in quarter hours, never less than it is; it may run over days. */
  public String wait(Duration d) {
    return days(QuarterHour.up(d));
  }

  /** A day and an hour, exactly; without real dates the days are counted. */
  public String moment(LocalDateTime t, boolean dated) {
    return dated
        ? pattern(words.say("units.message.moment-as-java-pattern")).format(t)
        : words.say("sheets.time-format.numbered-moment", number(t), t.toLocalTime().toString());
  }

  public String day(LocalDateTime t, boolean dated) {
    return dated
        ? pattern(words.say("sheets.time-format.day-as-java-pattern")).format(t)
        : words.say("sheets.time-format.numbered-day", number(t));
  }

  /** A day with its year, as a paper is dated. */
  public String date(LocalDate day) {
    return pattern(words.say("units.message.day-as-java-pattern")).format(day);
  }

  /** The hour at which something begins, to a quarter, where the day is said beside it. */
  public String hour(LocalDateTime t) {
    return clock(QuarterHour.up(t));
  }

  /** The hour by which something must have happened: never later than it is. */
  public String hourBefore(LocalDateTime t) {
    return clock(QuarterHour.down(t));
  }

  /** The hour of something short, to five minutes. */
  public String hourToFiveMinutes(LocalDateTime t) {
    long past = Math.round(t.getMinute() / (double) FIVE_MINUTES) * FIVE_MINUTES;
    return clock(t.withMinute(0).withSecond(0).withNano(0).plusMinutes(past));
  }

  /** When something is over that may fall into the night. */
  public String hourOfAnyDay(LocalDateTime t) {
    return anyHour(QuarterHour.up(t));
  }

  /** A deadline that may fall into the night. */
  public String hourBeforeOfAnyDay(LocalDateTime t) {
    return anyHour(QuarterHour.down(t));
  }

  private String clock(LocalDateTime t) {
    return pattern(words.say("sheets.time-format.hour-as-java-pattern")).format(t);
  }

  private String anyHour(LocalDateTime t) {
    return pattern(words.say("units.message.hour-as-java-pattern"))
        .format(t)
        .replace(' ', '\u00a0');
  }

  /** The day's whole name, such as Thursday, Dec 10; without real dates the days are counted. */
  public String weekday(LocalDateTime t, boolean dated) {
    return dated
        ? pattern(words.say("sheets.time-format.weekday-as-java-pattern")).format(t)
        : words.say("sheets.time-format.counted-day", number(t));
  }

  private DateTimeFormatter pattern(String pattern) {
    return DateTimeFormatter.ofPattern(pattern, words.locale());
  }

  /** Without a start date the plan counts from the first Monday of 2001. */
  private static int number(LocalDateTime t) {
    return t.toLocalDate().getDayOfMonth();
  }

  /** Hours and minutes, such as {@code 3 h 20 min}. */
  public String duration(Duration d) {
    long minutes = Math.round(d.toSeconds() / 60.0);
    long hours = minutes / 60;
    if (hours == 0) {
      return words.say("sheets.time-format.minutes", minutes);
    }
    return minutes % 60 == 0
        ? words.say("sheets.time-format.hours", hours)
        : words.say("sheets.time-format.hours-and-minutes", hours, minutes % 60);
  }

  /** A length of time that may run over days, such as {@code 1 d 3 h}. */
  public String days(Duration d) {
    long days = d.toDays();
    if (days == 0) {
      return duration(d);
    }
    return d.toHours() % 24 == 0 && d.toMinutesPart() == 0
        ? words.say("sheets.time-format.days", days)
        : words.say("sheets.time-format.days-and-hours", days, duration(d.minusDays(days)));
  }
}
