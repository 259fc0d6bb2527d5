package slabwright.inlay.artwork;

import java.awt.geom.Path2D;
import java.util.List;

/**
 * One thing the graphic paints, in the page's pixels.
 *
 * @param outline what it covers, with its fill rule
 * @param alpha 0 see-through to 1 solid
 * @param clips all of which it must lie in
 * @param masks all of which must let it through
 * @param as what it was drawn as
 */
public record PaintedShape(
    Path2D outline,
    String hex,
    double alpha,
    List<ClipOutlines> clips,
    List<SoftMask> masks,
    As as) {
  /** What a shape is drawn as. */
  public enum As {
    FILL,
    /** The area that a stroke covers. */
    STROKE,
    /** A stroke's middle line, kept as a line. */
    LINE
  }

  /** Whether it is a line without an area. */
  public boolean line() {
    return as == As.LINE;
  }

  /** The same in another colour. */
  public PaintedShape in(String colour) {
    return new PaintedShape(outline, colour, alpha, clips, masks, as);
  }
}
