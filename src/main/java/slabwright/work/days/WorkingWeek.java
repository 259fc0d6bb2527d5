package slabwright.work.days;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * The crew's working week.
 *
 * @param people in the crew
 * @param from when the day starts
 * @param length of the working day, at most to midnight
 * @param days that are worked
 */
public record WorkingWeek(int people, LocalTime from, Duration length, Set<DayOfWeek> days) {
  public WorkingWeek {
    days = days.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(days));
    if (people < 1 || days.isEmpty() || !fits(from, length)) {
      throw new IllegalArgumentException(
          "a crew works at least an hour on some day before midnight");
    }
  }

  /** Whether a working day of that start and length is at least an hour and ends by midnight. */
  public static boolean fits(LocalTime from, Duration length) {
    Duration end = Duration.between(LocalTime.MIN, from).plus(length);
    return length.compareTo(Duration.ofHours(1)) >= 0 && end.compareTo(Duration.ofHours(24)) <= 0;
  }

  /** Monday to Friday. */
  public static WorkingWeek weekdays(int people, LocalTime from, Duration length) {
    return new WorkingWeek(people, from, length, EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY));
  }

  /** The first working moment at or after {@code t}. */
  LocalDateTime next(LocalDateTime t) {
    LocalDateTime at = t;
    while (!works(at)) {
      LocalDateTime start = at.toLocalDate().atTime(from);
      boolean early = days.contains(at.getDayOfWeek()) && at.isBefore(start);
      at = early ? start : at.toLocalDate().plusDays(1).atTime(from);
    }
    return at;
  }

  /** The end of the working day {@code t} lies in. */
  LocalDateTime end(LocalDateTime t) {
    return t.toLocalDate().atTime(from).plus(length);
  }

  private boolean works(LocalDateTime t) {
    return days.contains(t.getDayOfWeek()) && !t.toLocalTime().isBefore(from) && t.isBefore(end(t));
  }
}
