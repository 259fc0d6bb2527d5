package slabwright.inlay.artwork;

import java.util.List;
import slabwright.inlay.artwork.ArtworkRefusal.Reason;
import slabwright.shape.Ring;
import slabwright.shape.check.CrossingCount;
import slabwright.units.Message;

/** Refuses outlines that cross so often that sorting out what is seen would need no end of room. */
final class CrossingBudget {
  /** Measured: so many fit in 512 MB. */
  static final long MOST = 200_000;

  private CrossingBudget() {}

  static void check(List<Ring> rings) {
    if (CrossingCount.exceeds(rings, MOST)) {
      throw new RefusedArtworkException(
          Reason.TOO_LARGE, Message.of("inlay.crossing-budget.too-many", MOST));
    }
  }
}
