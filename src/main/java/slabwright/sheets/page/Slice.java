package slabwright.sheets.page;

import java.util.List;
import slabwright.drawing.Ink;
import slabwright.drawing.View;
import slabwright.shape.Vec;

/**
 * A level strip of a column that is never cut.
 *
 * @param inks in paper mm from the strip's own top-left corner
 * @param keep whether the next strip must stand under it, as after a heading
 */
public record Slice(double height, boolean keep, List<Ink> inks) {
  public Slice {
    inks = List.copyOf(inks);
  }

  public static Slice space(double height) {
    return new Slice(height, false, List.of());
  }

  public List<Ink> at(double x, double y) {
    View there = View.yDown(1, Vec.ZERO, new Vec(x, y));
    return inks.stream().map(i -> i.placed(there)).toList();
  }
}
