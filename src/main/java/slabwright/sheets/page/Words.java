package slabwright.sheets.page;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import slabwright.units.QuantityFormat;

/** Times and shares as sheets show them. */
public final class Words {
  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

  private Words() {}

  public static String moment(LocalDateTime t, boolean dated) {
    return dated ? MOMENT.format(t) : "day " + number(t) + " " + t.toLocalTime();
  }

  public static String day(LocalDateTime t, boolean dated) {
    return dated ? DAY.format(t) : "day " + number(t);
  }

  /** Without a start date the plan counts from the first Monday of 2001. */
  private static long number(LocalDateTime t) {
    return t.toLocalDate().getDayOfMonth();
  }

  /** Hours and minutes, such as {@code 3 h 20 min}. */
  public static String time(Duration d) {
    long minutes = Math.round(d.toSeconds() / 60.0);
    long hours = minutes / 60;
    String rest = minutes % 60 == 0 && hours > 0 ? "" : minutes % 60 + " min";
    return (hours == 0 ? rest : hours + " h " + rest).strip();
  }

  /** A length of time that may run over days, such as {@code 1 d 3 h}. */
  public static String days(Duration d) {
    long days = d.toDays();
    String rest =
        days > 0 && d.toHours() % 24 == 0 && d.toMinutesPart() == 0 ? "" : time(d.minusDays(days));
    return (days == 0 ? rest : days + " d " + rest).strip();
  }

  /** A share of the air in parts per million. */
  public static String ppm(double share) {
    return QuantityFormat.number(share * 1e6, 0) + " ppm";
  }

  public static String percent(double share) {
    return QuantityFormat.number(share * 100, share < 0.1 ? 1 : 0) + " %";
  }
}
