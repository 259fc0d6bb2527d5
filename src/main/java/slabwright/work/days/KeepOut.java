package slabwright.work.days;

import java.time.Duration;
import java.util.List;
import slabwright.units.Message;

/**
 * Other trades stay off the floor area during a step and some time after it.
 *
 * @param reason in a few words
 * @param after how long past the step's end
 * @param beside floor areas that the same air gets to
 */
public record KeepOut(Message reason, Duration after, List<Beside> beside) {
  public KeepOut {
    beside = List.copyOf(beside);
  }

  /** Off its own floor area alone. */
  public KeepOut(Message reason, Duration after) {
    this(reason, after, List.of());
  }

  /** A floor area by its id, and its name. */
  public record Beside(String areaId, String area) {}
}
