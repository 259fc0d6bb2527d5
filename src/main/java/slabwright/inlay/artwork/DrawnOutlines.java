package slabwright.inlay.artwork;

import java.util.List;
import slabwright.shape.Line;

/**
 * The outlines drawn in an SVG file in paint order, at the size the file states (96 px to the
 * inch): fills with their colour, and closed lines as lines, whatever their width.
 *
 * @param lines lines that do not close, in the outlines' frame
 */
public record DrawnOutlines(String name, List<DrawnOutline> outlines, List<Line> lines)
    implements OutlinesResult {
  public DrawnOutlines {
    outlines = List.copyOf(outlines);
    lines = List.copyOf(lines);
  }
}
