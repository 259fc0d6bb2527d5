package slabwright.work;

import java.time.Duration;
import java.util.Optional;
import slabwright.work.air.EntryLimit;
import slabwright.work.days.DayPlan;
import slabwright.work.days.TimeSpan;

/**
 * When a floor area is closed for vapour, on the careful reading.
 *
 * @param area id of the floor area: the step's own, or one behind a shared doorway
 * @param step id of the step that lets the vapour go
 * @param limit what is passed; says whether nobody goes in or only who has no protection
 * @param after how long past the step's end; empty when it never clears
 * @param span from the step's start to when it is clear again; empty without a date
 */
public record ClosedAir(
    String area, String step, EntryLimit limit, Optional<Duration> after, Optional<TimeSpan> span) {

  /** The same for a floor area that the vapour gets to. */
  ClosedAir at(String other) {
    return new ClosedAir(other, step, limit, after, span);
  }

  /** The same with the dates that a day plan has for it. */
  ClosedAir on(DayPlan days) {
    Optional<TimeSpan> dates =
        days.step(step).flatMap(s -> after.map(a -> new TimeSpan(s.start(), s.end().plus(a))));
    return new ClosedAir(area, step, limit, after, dates);
  }
}
