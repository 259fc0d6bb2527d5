package slabwright.work.days;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
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
  /** Work is not begun before a night, nor left over for the morning, for less than this. */
  public static final Duration LEAST_PIECE = Duration.ofMinutes(30);

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

  /** The same week for another number of people. */
  public WorkingWeek withPeople(int n) {
    return new WorkingWeek(n, from, length, days);
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

  /**
   * The stretches of work of some length that starts at a working moment and goes on next morning.
   * Nothing is begun or left over for less than {@link #LEAST_PIECE}: sooner the day before ends
   * early, or the work starts the next morning.
   */
  List<TimeSpan> spread(Duration length, LocalDateTime from) {
    return spread(length, from, LEAST_PIECE);
  }

  /** With as little left over for the next morning as happens; the shortest that could be. */
  List<TimeSpan> spreadFreely(Duration length, LocalDateTime from) {
    return spread(length, from, Duration.ZERO);
  }

  private List<TimeSpan> spread(Duration length, LocalDateTime from, Duration least) {
    List<TimeSpan> spans = new ArrayList<>();
    Duration left = length;
    LocalDateTime at = from;
    while (true) {
      Duration today = Duration.between(at, end(at));
      if (left.compareTo(today) <= 0) {
        spans.add(new TimeSpan(at, at.plus(left)));
        return spans;
      }
      Duration before = left.minus(least);
      Duration piece = before.compareTo(today) < 0 ? before : today;
      if (piece.compareTo(least) >= 0) {
        spans.add(new TimeSpan(at, at.plus(piece)));
        left = left.minus(piece);
      }
      at = next(end(at));
    }
  }

  private boolean works(LocalDateTime t) {
    return days.contains(t.getDayOfWeek()) && !t.toLocalTime().isBefore(from) && t.isBefore(end(t));
  }
}
