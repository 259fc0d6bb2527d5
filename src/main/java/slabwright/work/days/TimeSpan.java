package slabwright.work.days;

import java.time.Duration;
import java.time.LocalDateTime;
import slabwright.units.QuarterHour;

/** A stretch of time, the end not included. */
public record TimeSpan(LocalDateTime start, LocalDateTime end) {
  public boolean meets(TimeSpan o) {
    return start.isBefore(o.end) && o.start.isBefore(end);
  }

  public Duration length() {
    return Duration.between(start, end);
  }

  /** As a stretch of work is told, in quarter hours: at least one. */
  public TimeSpan toldAsWork() {
    LocalDateTime from = QuarterHour.up(start);
    LocalDateTime to = QuarterHour.up(end);
    boolean some = start.isBefore(end);
    return new TimeSpan(from, some && !from.isBefore(to) ? from.plus(QuarterHour.STEP) : to);
  }

  /** As a stretch is told that somebody stays out, in quarter hours: never shorter than it is. */
  public TimeSpan toldAsShut() {
    return new TimeSpan(QuarterHour.down(start), QuarterHour.up(end));
  }
}
