package slabwright.work.days;

import java.time.Duration;
import java.util.Optional;

/**
 * How long a step waits for an earlier one, from the earlier one's end to this one's start. Past
 * {@code atMost} the floor has to be abraded first. A coat's longest recoat time runs from its
 * first stroke, so {@code atMost} is that time less what the coat takes.
 *
 * @param after the earlier task's id
 * @param atLeast the window opens, 0 for straight after
 * @param atMost the longest wait; empty when there is none
 */
public record StepWait(String after, Duration atLeast, Optional<Duration> atMost) {
  public StepWait {
    if (atLeast.isNegative() || atMost.filter(m -> m.compareTo(atLeast) < 0).isPresent()) {
      throw new IllegalArgumentException("a window that closes before it opens, after " + after);
    }
  }

  public static StepWait straightAfter(String after) {
    return new StepWait(after, Duration.ZERO, Optional.empty());
  }

  public static StepWait atLeast(String after, Duration opens) {
    return new StepWait(after, opens, Optional.empty());
  }

  public static StepWait window(String after, Duration opens, Duration closes) {
    return new StepWait(after, opens, Optional.of(closes));
  }
}
