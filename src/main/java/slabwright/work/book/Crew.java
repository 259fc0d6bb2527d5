package slabwright.work.book;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalTime;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import slabwright.units.Parsed;

/**
 * Who works and when.
 *
 * @param hourPrice what one hour of one person costs the client
 */
public record Crew(
    Figure<Integer> people,
    Figure<LocalTime> starts,
    Figure<Duration> day,
    Figure<Set<DayOfWeek>> days,
    Figure<BigDecimal> hourPrice) {

  static Crew read(BookSection s) {
    return new Crew(
        s.whole("people"),
        s.word("starts", "07:30").flatMap(Crew::clock),
        s.time("day"),
        s.list("days", "Mon, Tue, Wed", Crew::dayOfWeek).flatMap(Crew::some),
        s.price("price an hour"));
  }

  private static Figure<LocalTime> clock(String text) {
    return text.matches("([01]\\d|2[0-3]):[0-5]\\d")
        ? Figure.known(LocalTime.parse(text))
        : Figure.refused("\"%s\" is no time of day; write for example 07:30".formatted(text));
  }

  private static Figure<Set<DayOfWeek>> some(List<DayOfWeek> days) {
    return days.isEmpty()
        ? Figure.refused("the crew works on no day; write for example days = Mon, Tue")
        : Figure.known(Collections.unmodifiableSet(EnumSet.copyOf(days)));
  }

  private static Parsed<DayOfWeek> dayOfWeek(String text) {
    for (DayOfWeek day : DayOfWeek.values()) {
      if (day.name().toLowerCase(Locale.ROOT).startsWith(text.toLowerCase(Locale.ROOT))
          && text.length() >= 3) {
        return Parsed.ok(day);
      }
    }
    return Parsed.bad("\"%s\" is no day; write for example Mon, Tue, Wed".formatted(text));
  }
}
