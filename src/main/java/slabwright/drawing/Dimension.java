package slabwright.drawing;

import java.util.List;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;

/**
 * A measured length between two points, drawn beside them with its words in a gap of the line.
 *
 * @param offset millimetres of paper from the points to the line, to the left as seen when going
 *     from the first to the second; negative to the right
 * @param words the length as it is shown, already formatted
 */
public record Dimension(Vec from, Vec to, double offset, String words, TextStyle style)
    implements Ink {
  @Override
  public Dimension placed(View view) {
    return new Dimension(view.onPaper(from), view.onPaper(to), offset, words, style.placed(view));
  }

  @Override
  public Bounds reach() {
    return Bounds.of(List.of(from, to));
  }

  @Override
  public List<PrimitiveInk> parts(Bounds window) {
    return new DimensionParts(this).parts();
  }
}
