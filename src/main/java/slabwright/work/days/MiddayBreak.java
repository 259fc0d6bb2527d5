package slabwright.work.days;

import java.time.Duration;
import java.time.LocalTime;

/** When the crew rests; a coat goes on through it, for who lays it rests before or after. */
public record MiddayBreak(LocalTime from, Duration length) {
  LocalTime to() {
    return from.plus(length);
  }
}
