package slabwright.work.days;

import java.time.Duration;
import java.util.List;

/**
 * A coat that is wet: dust that falls into it stays in it.
 *
 * @param areas ids of the floor areas in which dust would reach it: its own, and those that share a
 *     doorway with it
 * @param after how long past the step's end it takes dust
 */
public record WetFilm(List<String> areas, Duration after) {
  public static final WetFilm NONE = new WetFilm(List.of(), Duration.ZERO);

  public WetFilm {
    areas = List.copyOf(areas);
    if (after.isNegative()) {
      throw new IllegalArgumentException("a coat is not dry before it is laid");
    }
  }

  /** The same coat where it dries in another time. */
  public WetFilm dryAfter(Duration time) {
    return areas.isEmpty() ? this : new WetFilm(areas, time);
  }
}
