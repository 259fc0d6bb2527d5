package slabwright.sheets.page;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.shape.Vec;

/** Running words, wrapped. */
public record Paragraph(String words) implements Block {
  @Override
  public List<Slice> slices(TypeSizes type, double width) {
    List<Slice> slices = new ArrayList<>();
    for (String line : TextMeasure.wrap(words, type.body(), width)) {
      Text text = Text.start(new Vec(0, 3.4 * type.k()), line, type.body());
      slices.add(new Slice(type.leading(), false, List.of(text)));
    }
    slices.add(Slice.space(2 * type.k()));
    return slices;
  }
}
