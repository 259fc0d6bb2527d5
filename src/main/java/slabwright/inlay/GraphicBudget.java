package slabwright.inlay;

import java.util.Optional;
import slabwright.inlay.artwork.CrossingBudget;
import slabwright.inlay.stencil.DyeLayer;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.units.Message;

/**
 * Refuses what is dyed of a graphic where it is too much to be planned, before it is: a stencil is
 * looked at opening by opening, corner by corner, and every few millimetres along all outlines. As
 * {@link CrossingBudget} does for what is drawn before it is known what is seen.
 */
final class GraphicBudget {
  /** Measured: so many dots are planned in about 5 s, with the image's options. */
  static final int MOST_OUTLINES = 6_000;

  /** Measured: so many of dots are planned in 512 MB, though not in 5 s. */
  static final int MOST_CORNERS = 400_000;

  /** Measured: so far is looked along in 512 MB where all of it is too narrow. */
  static final double MOST_LENGTH = 1_000_000;

  private static final double MM_A_METRE = 1000;
  private static final double MM_A_FOOT = 304.8;

  private GraphicBudget() {}

  /** What to say of a graphic that is too much; empty where it isn't. */
  static Optional<Message> tooMuch(DyedGraphic graphic) {
    int outlines = 0;
    int corners = 0;
    double length = 0;
    for (DyeLayer layer : graphic.layers()) {
      Region region = layer.artwork();
      length += region.boundaryLength();
      for (Ring ring : region.rings()) {
        outlines++;
        corners += ring.points().size();
      }
    }
    if (outlines > MOST_OUTLINES) {
      return Optional.of(
          Message.of("inlay.graphic-budget.too-many-outlines", outlines, MOST_OUTLINES));
    }
    if (corners > MOST_CORNERS) {
      return Optional.of(
          Message.of("inlay.graphic-budget.too-many-corners", corners, MOST_CORNERS));
    }
    return length > MOST_LENGTH
        ? Optional.of(
            Message.of(
                "inlay.graphic-budget.too-long",
                length / MM_A_METRE,
                length / MM_A_FOOT,
                MOST_LENGTH / MM_A_METRE,
                MOST_LENGTH / MM_A_FOOT))
        : Optional.empty();
  }
}
