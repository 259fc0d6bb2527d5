package slabwright.work.days;

import java.time.Duration;
import java.util.List;

/**
 * Where a step's vapour gets to beyond its own floor area, from the step's start on.
 *
 * @param areas ids of the floor areas that share a doorway with the step's own
 * @param after how long past the step's end it is there
 * @param closes who stays out of them that long
 */
public record VapourReach(List<String> areas, Duration after, Closes closes) {
  public static final VapourReach NOWHERE =
      new VapourReach(List.of(), Duration.ZERO, Closes.NOBODY);

  /** Whom it keeps out of those floor areas; sparks it always does. */
  public enum Closes {
    NOBODY,
    UNPROTECTED,
    EVERYONE
  }

  /** Vapour that keeps nothing out but sparks. */
  public VapourReach(List<String> areas, Duration after) {
    this(areas, after, Closes.NOBODY);
  }

  /** Whether a step on one of those floor areas has to wait. */
  boolean keepsOut(boolean sparks, boolean masked) {
    return switch (closes) {
      case NOBODY -> sparks;
      case UNPROTECTED -> sparks || !masked;
      case EVERYONE -> true;
    };
  }

  public VapourReach {
    areas = List.copyOf(areas);
    if (after.isNegative()) {
      throw new IllegalArgumentException("vapour is not gone before its step ends");
    }
  }
}
