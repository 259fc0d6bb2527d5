package slabwright.work.days;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slabwright.units.QuarterHour;

/**
 * The crew's working week: when there are steps; who comes earlier to set up is there before.
 *
 * @param people in the crew
 * @param from when the day starts
 * @param length of the working day, at most to midnight
 * @param days that are worked
 * @param rest at least an hour from both ends of the day; empty when nobody says that there is one
 */
@RecordBuilder
public record WorkingWeek(
    int people, LocalTime from, Duration length, Set<DayOfWeek> days, Optional<MiddayBreak> rest)
    implements WorkingWeekBuilder.With {
  /** When the crew rests; a coat goes on through it, for who lays it rests before or after. */
  public record MiddayBreak(LocalTime from, Duration length) {
    LocalTime to() {
      return from.plus(length);
    }
  }

  /** Work is not begun before a night, nor left over for the morning, for less than this. */
  static final Duration LEAST_PIECE = Duration.ofMinutes(30);

  /** The same for the rest: tools stay where they are, so that a quarter of an hour is worth it. */
  static final Duration LEAST_BEFORE_REST = QuarterHour.STEP;

  public WorkingWeek {
    days = days.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(days));
    if (people < 1 || days.isEmpty() || !fits(from, length)) {
      throw new IllegalArgumentException(
          "a crew works at least an hour on some day before midnight");
    }
  }

  /** A week without a break. */
  public WorkingWeek(int people, LocalTime from, Duration length, Set<DayOfWeek> days) {
    this(people, from, length, days, Optional.empty());
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

  /** The same week with a rest in the middle of the day; none where no hour is left beside it. */
  public WorkingWeek resting(Duration time) {
    Duration half = QuarterHour.down(length.minus(time).dividedBy(2));
    boolean some = !time.isZero() && half.compareTo(Duration.ofHours(1)) >= 0;
    return some ? withRest(Optional.of(new MiddayBreak(from.plus(half), time))) : this;
  }

  /** The first working moment at or after {@code t}. */
  LocalDateTime next(LocalDateTime t) {
    LocalDateTime at = t;
    while (!works(at)) {
      LocalDateTime start = at.toLocalDate().atTime(from);
      boolean early = days.contains(at.getDayOfWeek()) && at.isBefore(start);
      at = early ? start : at.toLocalDate().plusDays(1).atTime(from);
    }
    return rests(at) ? at.toLocalDate().atTime(rest.orElseThrow().to()) : at;
  }

  /** The end of the working day {@code t} lies in. */
  LocalDateTime end(LocalDateTime t) {
    return t.toLocalDate().atTime(from).plus(length);
  }

  private boolean rests(LocalDateTime t) {
    LocalTime clock = t.toLocalTime();
    return rest.filter(r -> !clock.isBefore(r.from()) && clock.isBefore(r.to())).isPresent();
  }

  /**
   * How long those rest right after work that went on through the rest; nothing after other work.
   *
   * @param spans of one step
   */
  public Duration restAfter(List<TimeSpan> spans) {
    return rest.filter(r -> spans.stream().anyMatch(s -> goesThrough(s, r)))
        .map(MiddayBreak::length)
        .orElse(Duration.ZERO);
  }

  private static boolean goesThrough(TimeSpan s, MiddayBreak r) {
    LocalDateTime begins = s.start().toLocalDate().atTime(r.from());
    return s.start().isBefore(begins) && s.end().isAfter(begins);
  }

  /** The longest that can be done in one go: who does it rests before or after. */
  public Duration inOneGo() {
    return rest.map(r -> length.minus(r.length())).orElse(length);
  }

  /** What a stop that work comes to leaves before and after it. */
  private Duration least(LocalDateTime stop) {
    return rest.filter(r -> r.from().equals(stop.toLocalTime())).isPresent()
        ? LEAST_BEFORE_REST
        : LEAST_PIECE;
  }

  /** When work that pauses stops next: for the rest or for the night. */
  private LocalDateTime stop(LocalDateTime t) {
    return rest.map(r -> t.toLocalDate().atTime(r.from())).filter(t::isBefore).orElse(end(t));
  }

  /**
   * The stretches of work of some length that starts at a working moment and goes on after the rest
   * and next morning. Nothing is begun or left over for less than {@link #LEAST_PIECE}, at the rest
   * {@link #LEAST_BEFORE_REST}: sooner the stretch before ends early, or the work starts after it.
   */
  List<TimeSpan> spread(Duration length, LocalDateTime from) {
    List<TimeSpan> spans = new ArrayList<>();
    Duration left = length;
    LocalDateTime at = from;
    while (true) {
      LocalDateTime stop = stop(at);
      Duration today = Duration.between(at, stop);
      if (left.compareTo(today) <= 0) {
        spans.add(new TimeSpan(at, at.plus(left)));
        return spans;
      }
      Duration least = least(stop);
      Duration before = left.minus(least);
      Duration piece = before.compareTo(today) < 0 ? before : today;
      if (piece.compareTo(least) >= 0) {
        spans.add(new TimeSpan(at, at.plus(piece)));
        left = left.minus(piece);
      }
      at = next(stop);
    }
  }

  /** The end of work at the soonest, without rest and with as little left over as happens. */
  LocalDateTime soonest(Duration work, LocalDateTime begin) {
    Duration left = work;
    LocalDateTime at = next(begin);
    while (left.compareTo(Duration.between(at, end(at))) > 0) {
      left = left.minus(Duration.between(at, end(at)));
      at = next(end(at));
    }
    return at.plus(left);
  }

  private boolean works(LocalDateTime t) {
    return days.contains(t.getDayOfWeek()) && !t.toLocalTime().isBefore(from) && t.isBefore(end(t));
  }
}
