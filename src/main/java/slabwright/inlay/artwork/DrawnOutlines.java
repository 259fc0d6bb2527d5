package slabwright.inlay.artwork;

import java.util.List;
import slabwright.shape.Line;
import slabwright.shape.Vec;

/**
 * The outlines drawn in an SVG file or seen in a picture, in paint order, at the size the file
 * states (96 px to the inch): fills with their colour, and closed lines as lines, whatever their
 * width.
 *
 * @param title what the drawing calls itself; may be empty
 * @param lines lines that do not close, in the outlines' frame
 * @param words texts kept as text, in the same frame
 * @param painted what shows of each color
 * @param doubt mm that flattening a curve may put an edge elsewhere
 */
public record DrawnOutlines(
    String name,
    String title,
    List<DrawnOutline> outlines,
    List<DrawnLine> lines,
    List<DrawnWords> words,
    PaintedPage painted,
    double doubt)
    implements OutlinesResult {
  /** The layer of letters; no group can have this id. */
  public static final String WORDS = "#words";

  /** The layer of areas that strokes cover. */
  public static final String STROKES = "#strokes";

  /** The layer of what was seen in a picture, which states no size. */
  public static final String UNSIZED = "#unsized";

  /** A line that does not close, and the id of its named group. */
  public record DrawnLine(Line line, String layer) {}

  /** A text and its middle. */
  public record DrawnWords(String text, Vec at) {}

  public DrawnOutlines {
    outlines = List.copyOf(outlines);
    lines = List.copyOf(lines);
    words = List.copyOf(words);
  }
}
