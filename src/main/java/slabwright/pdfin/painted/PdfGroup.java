package slabwright.pdfin.painted;

import java.util.ArrayList;
import java.util.List;

/**
 * Where paint goes: the page, a group that is painted as one, or something painted beside the page
 * such as a tile.
 *
 * @param shapes painted so far, in paint order; grows
 * @param alpha all of it is seen at, 0 to 1
 * @param masks all of it is seen through
 */
record PdfGroup(List<PdfPaintedShape> shapes, double alpha, List<PdfSoftMask> masks) {
  /** Nothing painted yet, seen as it is. */
  static PdfGroup page() {
    return new PdfGroup(new ArrayList<>(), 1, List.of());
  }

  /** A group in this one, whose shapes are painted among its own. */
  PdfGroup inner(double share, List<PdfSoftMask> through) {
    return new PdfGroup(shapes, alpha * share, through);
  }
}
