package slabwright.work.days;

import java.time.Duration;
import java.time.LocalDateTime;

/** A stretch of time, the end not included. */
public record TimeSpan(LocalDateTime start, LocalDateTime end) {
  boolean meets(TimeSpan o) {
    return start.isBefore(o.end) && o.start.isBefore(end);
  }

  public Duration length() {
    return Duration.between(start, end);
  }
}
