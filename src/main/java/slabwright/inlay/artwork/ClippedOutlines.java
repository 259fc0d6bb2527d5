package slabwright.inlay.artwork;

import java.awt.geom.AffineTransform;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slabwright.shape.FillRule;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Window;
import slabwright.units.Message;

/**
 * Outlines and lines cut by the clips and masks of the shapes that they are of. Where they cross
 * too often to be sorted out they stay whole, and the reason is kept.
 */
public final class ClippedOutlines {
  private final ShapeClipper clipper;
  private final Map<List<ClipOutlines>, Optional<Window>> windows = new HashMap<>();
  private Optional<Message> unread = Optional.empty();

  /**
   * Cuts in one frame.
   *
   * @param toMm to the outlines' frame
   * @param tolerance mm, of a curve
   */
  public ClippedOutlines(AffineTransform toMm, double tolerance) {
    clipper = new ShapeClipper(toMm, tolerance);
  }

  /** What shows of a shape's filled outlines; nothing where all of them does. */
  public Optional<Region> cut(PaintedShape shape, List<Ring> rings, FillRule rule) {
    Optional<Window> window = windowOrWhole(shape);
    Optional<Message> tooMany = window.flatMap(w -> CrossingBudget.tooMany(rings));
    if (tooMany.isPresent()) {
      unread = tooMany;
      return Optional.empty();
    }
    return window.flatMap(w -> w.cut(rings, rule));
  }

  /** The stretches of a shape's line that show; nothing where all of it does. */
  public Optional<List<Line>> cut(PaintedShape shape, Line line) {
    return windowOrWhole(shape).flatMap(w -> w.cut(line));
  }

  /** The same for a line that closes. */
  public Optional<List<Line>> cut(PaintedShape shape, Ring closed) {
    return windowOrWhole(shape).flatMap(w -> w.cut(closed));
  }

  private Optional<Window> windowOrWhole(PaintedShape shape) {
    try {
      return window(shape);
    } catch (RefusedArtworkException tooMuch) {
      unread = Optional.of(tooMuch.why());
      return Optional.empty();
    }
  }

  /** Why something was left whole. */
  public Optional<Message> unread() {
    return unread;
  }

  private Optional<Window> window(PaintedShape shape) {
    if (!shape.masks().isEmpty()) {
      return clipper.window(shape);
    }
    Optional<Window> known = windows.get(shape.clips());
    if (known == null) {
      known = clipper.window(shape);
      windows.put(shape.clips(), known);
    }
    return known;
  }
}
