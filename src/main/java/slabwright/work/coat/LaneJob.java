package slabwright.work.coat;

import java.time.Duration;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/**
 * What lanes are laid out for.
 *
 * @param floor to roll, mm
 * @param wayOut where the crew leaves, mm
 * @param pitch width of a lane: the roller less its lap, mm
 * @param rate mm² an hour of all who roll
 * @param batchArea mm² after which the crew waits for the next batch; infinite for none
 * @param pause how long it waits
 */
public record LaneJob(
    Region floor, Vec wayOut, double pitch, double rate, double batchArea, Duration pause) {
  /** The narrowest neck a person walks through in wet work, mm; common practice, no source. */
  public static final double NECK = 450;

  public LaneJob {
    if (!(pitch > 0 && rate > 0 && batchArea > 0)) {
      throw new IllegalArgumentException("lanes need a pitch, a rate and a batch above 0");
    }
  }

  /** Lanes without waits for batches. */
  public static LaneJob of(Region floor, Vec wayOut, double pitch, double rate) {
    return new LaneJob(floor, wayOut, pitch, rate, Double.POSITIVE_INFINITY, Duration.ZERO);
  }

  /** How long after the start an area is done. */
  Duration timeFor(double mm2) {
    double waits = Math.floor(mm2 / batchArea) * pause.toMillis();
    return Duration.ofMillis(Math.round(mm2 / rate * 3.6e6 + waits));
  }
}
