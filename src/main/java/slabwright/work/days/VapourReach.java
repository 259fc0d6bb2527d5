package slabwright.work.days;

import java.time.Duration;
import java.util.List;

/**
 * Where a step's vapour gets to beyond its own floor area, from the step's start on.
 *
 * @param areas ids of the floor areas that share a doorway with the step's own
 * @param after how long past the step's end it is there
 */
public record VapourReach(List<String> areas, Duration after) {
  public static final VapourReach NOWHERE = new VapourReach(List.of(), Duration.ZERO);

  public VapourReach {
    areas = List.copyOf(areas);
    if (after.isNegative()) {
      throw new IllegalArgumentException("vapour is not gone before its step ends");
    }
  }
}
