package slabwright.sheets.page;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Symbol;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.shape.Vec;

/**
 * Short sentences under each other.
 *
 * @param ticks whether each has a box to tick before it; else a dot
 */
public record BulletBlock(List<String> items, boolean ticks) implements Block {
  private static final double INDENT = 4;

  public BulletBlock {
    items = List.copyOf(items);
  }

  public BulletBlock(List<String> items) {
    this(items, false);
  }

  /** With a box to tick before each. */
  public static BulletBlock ofTicks(List<String> items) {
    return new BulletBlock(items, true);
  }

  @Override
  public List<Slice> slices(TypeSizes type, double width) {
    List<Slice> slices = new ArrayList<>();
    double k = type.k();
    for (String item : items) {
      List<Ink> inks = new ArrayList<>();
      double y = 0;
      for (String line : TextMeasure.wrap(item, type.body(), width - indent() * k)) {
        inks.add(Text.start(new Vec(indent() * k, y + 3.4 * k), line, type.body()));
        y += type.leading();
      }
      inks.add(
          ticks
              ? Symbol.of(Symbol.Kind.TICK_BOX, new Vec(2 * k, 2.3 * k), 3.6 * k, Palette.INK)
              : Text.start(new Vec(0.6 * k, 3.4 * k), "·", type.strong()));
      slices.add(new Slice(y + (ticks ? 1.1 : 0.5) * k, false, inks));
    }
    slices.add(Slice.space(2 * k));
    return slices;
  }

  private double indent() {
    return ticks ? 6 : INDENT;
  }
}
