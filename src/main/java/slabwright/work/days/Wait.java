package slabwright.work.days;

import java.time.Duration;
import java.util.Optional;

/**
 * How long a step waits for an earlier one, from the earlier one's end to this one's start. Past
 * {@code atMost} the floor has to be abraded first.
 *
 * @param after the earlier task's id
 * @param atLeast the window opens, 0 for straight after
 * @param atMost the longest recoat time; empty when there is none
 */
public record Wait(String after, Duration atLeast, Optional<Duration> atMost) {
  public Wait {
    if (atLeast.isNegative() || atMost.filter(m -> m.compareTo(atLeast) < 0).isPresent()) {
      throw new IllegalArgumentException("a window that closes before it opens, after " + after);
    }
  }

  public static Wait straightAfter(String after) {
    return new Wait(after, Duration.ZERO, Optional.empty());
  }

  public static Wait atLeast(String after, Duration opens) {
    return new Wait(after, opens, Optional.empty());
  }

  public static Wait window(String after, Duration opens, Duration closes) {
    return new Wait(after, opens, Optional.of(closes));
  }
}
