package slabwright.sheets.page;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.shape.Vec;

/** Short sentences under each other, each with a dot before it. */
public record BulletBlock(List<String> items) implements Block {
  private static final double INDENT = 4;

  public BulletBlock {
    items = List.copyOf(items);
  }

  @Override
  public List<Slice> slices(TypeSizes type, double width) {
    List<Slice> slices = new ArrayList<>();
    double k = type.k();
    for (String item : items) {
      List<Ink> inks = new ArrayList<>();
      double y = 0;
      for (String line : TextMeasure.wrap(item, type.body(), width - INDENT * k)) {
        inks.add(Text.start(new Vec(INDENT * k, y + 3.4 * k), line, type.body()));
        y += type.leading();
      }
      inks.add(Text.start(new Vec(0.6 * k, 3.4 * k), "·", type.strong()));
      slices.add(new Slice(y + 0.5 * k, false, inks));
    }
    slices.add(Slice.space(2 * k));
    return slices;
  }
}
