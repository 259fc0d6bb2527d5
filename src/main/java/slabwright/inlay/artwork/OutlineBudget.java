package slabwright.inlay.artwork;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.List;
import slabwright.inlay.artwork.ArtworkRefusal.Reason;
import slabwright.shape.Ring;
import slabwright.units.Message;

/**
 * Counts the pieces of all outlines as they come: a short line of fine dashes has thousands. And
 * the corners of all outlines as they are flattened: a wide circle has a thousand.
 */
public final class OutlineBudget {
  /** Measured: so many are read in 512 MB. */
  private static final long MOST = 1_500_000;

  /** Measured: so many are sorted out in 512 MB, though not in 5 s. */
  private static final long MOST_CORNERS = 500_000;

  private long pieces;
  private long corners;

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

  /**
   * Counts the flattened outlines of a shape, and refuses the graphic when there are too many
   * corners by now.
   *
   * @param shapes how many the graphic has
   */
  void addFlattened(List<Ring> rings, int shapes) {
    for (Ring ring : rings) {
      corners += ring.points().size();
    }
    if (corners > MOST_CORNERS) {
      throw new RefusedArtworkException(
          Reason.TOO_LARGE,
          Message.of("inlay.outline-budget.too-many-corners", shapes, MOST_CORNERS));
    }
  }
}
