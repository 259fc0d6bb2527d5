package slabwright.sheets.page;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.shape.Vec;

/** A heading in a column; it never stands alone at the foot. */
public record Heading(String words) implements Block {
  @Override
  public List<Slice> slices(TypeSizes type, double width) {
    List<Ink> lines = new ArrayList<>();
    double y = 4.6 * type.k();
    for (String line : TextMeasure.wrap(words, type.heading(), width)) {
      lines.add(Text.start(new Vec(0, y), line, type.heading()));
      y += 5.2 * type.k();
    }
    return List.of(new Slice(y - 2.4 * type.k(), true, lines));
  }
}
