package slabwright.pdfin.painted;

import java.awt.BasicStroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.List;
import java.util.Optional;
import slabwright.pdfin.picture.Picture;

/**
 * One thing that a page paints: a fill, a stroke, or a picture in the unit square.
 *
 * @param path with its fill rule; of a stroke, the line it follows
 * @param toPage from the path's frame to the page's pixels; a pen is round in the path's frame
 * @param pen of a stroke; empty for a fill
 * @param hex {@code #rrggbb}
 * @param alpha 0 see-through to 1 solid
 * @param clips in the page's pixels, with their fill rules; it shows inside all of them. Shapes
 *     under the same clip hold the same object
 * @param masks all of which must let it through
 * @param picture what the unit square shows, its rows from y = 1 down; then the colour says nothing
 */
public record PdfPaintedShape(
    Path2D path,
    AffineTransform toPage,
    Optional<BasicStroke> pen,
    String hex,
    double alpha,
    List<Path2D> clips,
    List<PdfSoftMask> masks,
    Optional<Picture> picture) {
  public PdfPaintedShape {
    clips = List.copyOf(clips);
    masks = List.copyOf(masks);
  }
}
