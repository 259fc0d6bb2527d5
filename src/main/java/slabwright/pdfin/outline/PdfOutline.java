package slabwright.pdfin.outline;

import java.util.List;
import java.util.Optional;
import slabwright.shape.FillRule;
import slabwright.shape.Ring;

/**
 * One closed thing drawn on a page.
 *
 * @param rings mm from the page's top-left, x right, y down
 * @param fill {@code #rrggbb} when it is filled; empty for a bare line
 * @param layer name of the layer (optional content group) it lies in; empty when in none
 */
public record PdfOutline(List<Ring> rings, FillRule rule, Optional<String> fill, String layer) {
  public PdfOutline {
    rings = List.copyOf(rings);
  }
}
