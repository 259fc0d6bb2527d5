package slabwright.work.coat;

import java.time.Duration;

/**
 * What lanes are timed for.
 *
 * @param grid the ways they can lie
 * @param rate mm² an hour of all who roll
 * @param batchArea mm² after which the crew waits for the next batch; infinite for none
 * @param pause how long it waits
 */
public record LaneParameters(LaneGrid grid, double rate, double batchArea, Duration pause) {
  /** The narrowest neck a person walks through in wet work, mm; common practice, no source. */
  public static final double NECK = 450;

  public LaneParameters {
    if (!(rate > 0 && batchArea > 0)) {
      throw new IllegalArgumentException("lanes need a rate and a batch above 0");
    }
  }

  /** Lanes without waits for batches. */
  public static LaneParameters of(LaneGrid grid, double rate) {
    return new LaneParameters(grid, rate, Double.POSITIVE_INFINITY, Duration.ZERO);
  }

  /** The same at another pace, mm² an hour. */
  LaneParameters withRate(double other) {
    return new LaneParameters(grid, other, batchArea, pause);
  }

  /** How long after the start an area is done. */
  Duration timeFor(double mm2) {
    double waits = Math.floor(mm2 / batchArea) * pause.toMillis();
    return Duration.ofMillis(Math.round(mm2 / rate * 3.6e6 + waits));
  }
}
