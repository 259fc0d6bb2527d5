package slabwright.sheets.page;

import java.util.List;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.shape.Vec;

/** A heading in a column; it never stands alone at the foot. */
public record Heading(String words) implements Block {
  @Override
  public List<Slice> slices(TypeSizes type, double width) {
    String shown = TextMeasure.fitted(words, type.heading(), width);
    Text text = Text.start(new Vec(0, 4.6 * type.k()), shown, type.heading());
    return List.of(new Slice(7.4 * type.k(), true, List.of(text)));
  }
}
