package slabwright.work.book;

import java.time.Duration;

/**
 * What a crew does besides the steps themselves: presence that is no progress on the floor. Times
 * are of the whole crew; rates in mm² or mm an hour for one person.
 *
 * @param unloading once, when the crew comes
 * @param daily set-up each morning
 * @param cleanUp each evening
 * @param strike once, when all is done
 * @param breaks in a working day, all together
 * @param hepaPass vacuuming the floor between two grinding passes, mm² an hour
 * @param wallMasking film and tape along walls, doorways and what stands there, mm an hour
 * @param fanAndDuct setting up one fan with its duct, once
 */
public record SetUpTimes(
    Figure<Duration> unloading,
    Figure<Duration> daily,
    Figure<Duration> cleanUp,
    Figure<Duration> strike,
    Figure<Duration> breaks,
    Figure<Double> hepaPass,
    Figure<Double> wallMasking,
    Figure<Duration> fanAndDuct) {

  static SetUpTimes read(BookSection s) {
    return new SetUpTimes(
        s.time("unloading"),
        s.time("daily_set-up"),
        s.time("daily_clean-up"),
        s.time("strike"),
        s.time("breaks_a_day"),
        s.number("hepa_pass", BookDimension.AREA_RATE),
        s.number("wall_masking", BookDimension.RUN_RATE),
        s.time("fan_and_duct"));
  }
}
