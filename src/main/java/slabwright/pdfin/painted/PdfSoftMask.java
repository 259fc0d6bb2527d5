package slabwright.pdfin.painted;

import java.util.List;

/**
 * A mask of a page: it lets through where what it paints is bright.
 *
 * @param byAlpha whether what is painted counts, whatever its brightness
 */
public record PdfSoftMask(List<PdfPaintedShape> painted, boolean byAlpha) {
  public PdfSoftMask {
    painted = List.copyOf(painted);
  }
}
