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
 * @param line whether it is a stroke's middle line, kept as a line
 */
public record PaintedShape(
    Path2D outline,
    String hex,
    double alpha,
    List<ClipOutlines> clips,
    List<SoftMask> masks,
    boolean line) {
  /** The same in another colour. */
  public PaintedShape in(String colour) {
    return new PaintedShape(outline, colour, alpha, clips, masks, line);
  }
}
