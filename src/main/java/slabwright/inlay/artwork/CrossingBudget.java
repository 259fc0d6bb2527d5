package slabwright.inlay.artwork;

import java.util.List;
import java.util.Optional;
import slabwright.inlay.artwork.ArtworkRefusal.Reason;
import slabwright.shape.Ring;
import slabwright.shape.check.CrossingCount;
import slabwright.units.Message;

/** Refuses outlines that cross so often that sorting out what is seen would need no end of room. */
public final class CrossingBudget {
  /** Measured: so many fit in 512 MB. */
  static final long MOST = 200_000;

  private CrossingBudget() {}

  static void check(List<Ring> rings) {
    tooMany(rings)
        .ifPresent(
            why -> {
              throw new RefusedArtworkException(Reason.TOO_LARGE, why);
            });
  }

  /** What to say of outlines that cross too often to be sorted out; empty where they don't. */
  public static Optional<Message> tooMany(List<Ring> rings) {
    return CrossingCount.exceeds(rings, MOST)
        ? Optional.of(Message.of("inlay.crossing-budget.too-many", MOST))
        : Optional.empty();
  }
}
