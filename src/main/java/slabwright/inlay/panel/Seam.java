package slabwright.inlay.panel;

import java.util.List;
import slabwright.shape.Bounds;

/**
 * Where two panels meet.
 *
 * @param first the panel or strip on the left or top as read
 * @param second its neighbour
 * @param lap the rectangle that both cover
 * @param marks the witness marks on it
 */
public record Seam(String first, String second, Bounds lap, List<WitnessMark> marks) {
  public Seam {
    marks = List.copyOf(marks);
  }
}
