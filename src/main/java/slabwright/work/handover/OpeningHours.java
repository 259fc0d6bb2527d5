package slabwright.work.handover;

import java.time.LocalDateTime;
import java.time.LocalTime;

/**
 * Hours at which people open a door: a floor that is dry at ten past three at night opens in the
 * morning. From eight to six, in quarter hours; common practice, no source.
 */
final class OpeningHours {
  static final LocalTime OPENS = LocalTime.of(8, 0);
  static final LocalTime SHUTS = LocalTime.of(18, 0);
  private static final int QUARTER = 15;

  private OpeningHours() {}

  /** The first time that is not before one and that somebody is there to open; never earlier. */
  static LocalDateTime next(LocalDateTime t) {
    LocalDateTime quarter = quarterHour(t);
    if (quarter.toLocalTime().isBefore(OPENS)) {
      return quarter.toLocalDate().atTime(OPENS);
    }
    return quarter.toLocalTime().isAfter(SHUTS)
        ? quarter.toLocalDate().plusDays(1).atTime(OPENS)
        : quarter;
  }

  /** Rounded up to a quarter of an hour. */
  static LocalDateTime quarterHour(LocalDateTime t) {
    LocalDateTime minute = t.withSecond(0).withNano(0);
    LocalDateTime whole = minute.isBefore(t) ? minute.plusMinutes(1) : minute;
    return whole.plusMinutes((QUARTER - whole.getMinute() % QUARTER) % QUARTER);
  }
}
