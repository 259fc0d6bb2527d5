package slabwright.inlay.artwork;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import slabwright.inlay.artwork.ArtworkRefusal.Reason;
import slabwright.units.Message;

/** Counts the pieces of all outlines as they come: a short line of fine dashes has thousands. */
public final class OutlineBudget {
  /** Measured: so many are read in 512 MB. */
  private static final long MOST = 1_500_000;

  private long pieces;

  /** Counts an outline, and refuses the graphic when there are too many pieces by now. */
  public void add(Path2D outline) {
    for (PathIterator it = outline.getPathIterator(null); !it.isDone(); it.next()) {
      pieces++;
    }
    if (pieces > MOST) {
      throw new RefusedArtworkException(
          Reason.TOO_LARGE, Message.of("inlay.outline-budget.too-many", MOST));
    }
  }
}
