package slabwright.work.book;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalTime;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import slabwright.units.Message;
import slabwright.units.Result;

/**
 * Who works and when.
 *
 * @param hourPrice what one hour of one person costs the client
 */
@RecordBuilder
public record Crew(
    Figure<Integer> people,
    Figure<LocalTime> starts,
    Figure<Duration> day,
    Figure<Set<DayOfWeek>> days,
    Figure<BigDecimal> hourPrice)
    implements CrewBuilder.With {

  static Crew read(BookSection s) {
    return new Crew(
        s.whole("people"),
        s.word("starts", BookSection.example("07:30")).flatMap(Crew::clock),
        s.time("day"),
        s.list("days", Message.of("work.crew.mon-tue-wed"), Crew::dayOfWeek).flatMap(Crew::some),
        s.price("price_an_hour"));
  }

  private static Figure<LocalTime> clock(String text) {
    return text.matches("([01]\\d|2[0-3]):[0-5]\\d")
        ? Figure.known(LocalTime.parse(text))
        : Figure.refused(Message.of("work.crew.is-no-time-of-day", text));
  }

  private static Figure<Set<DayOfWeek>> some(List<DayOfWeek> days) {
    return days.isEmpty()
        ? Figure.refused(Message.of("work.crew.the-crew-works-on-no"))
        : Figure.known(Collections.unmodifiableSet(EnumSet.copyOf(days)));
  }

  private static Result<DayOfWeek> dayOfWeek(String text) {
    for (DayOfWeek day : DayOfWeek.values()) {
      if (day.name().toLowerCase(Locale.ROOT).startsWith(text.toLowerCase(Locale.ROOT))
          && text.length() >= 3) {
        return Result.ok(day);
      }
    }
    return Result.refused(Message.of("work.crew.is-no-day-write-for", text));
  }
}
