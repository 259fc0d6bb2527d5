package slabwright.sheets.page;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Symbol;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.drawing.TextStyle;
import slabwright.shape.Vec;

/** Short sentences with a box to tick before each, in two columns of the same height; never cut. */
public record TickColumns(List<String> items) implements Block {
  private static final double BETWEEN = 6;
  private static final double INDENT = 5.6;
  private static final double LEADING = 4.2;
  private static final double AFTER = 1.2;
  private static final double BOX = 3.6;

  public TickColumns {
    items = List.copyOf(items);
  }

  @Override
  public List<Slice> slices(TypeSizes type, double width) {
    double column = (width - BETWEEN) / 2;
    TextStyle style = type.small().in(Palette.INK);
    List<List<String>> wrapped =
        items.stream().map(i -> TextMeasure.wrap(i, style, column - INDENT)).toList();
    int left = split(wrapped);
    List<Ink> inks = new ArrayList<>();
    double high = set(inks, wrapped.subList(0, left), style, 0);
    high =
        Math.max(high, set(inks, wrapped.subList(left, wrapped.size()), style, column + BETWEEN));
    return List.of(new Slice(high + 1, false, inks));
  }

  private static double height(List<List<String>> items) {
    return items.stream().mapToDouble(l -> l.size() * LEADING + AFTER).sum();
  }

  /** How many stand on the left, so that the higher column is as low as can be. */
  private static int split(List<List<String>> items) {
    int best = items.size();
    double least = height(items);
    for (int n = 0; n < items.size(); n++) {
      double high = Math.max(height(items.subList(0, n)), height(items.subList(n, items.size())));
      if (high < least) {
        best = n;
        least = high;
      }
    }
    return best;
  }

  private static double set(List<Ink> inks, List<List<String>> items, TextStyle style, double x) {
    double y = 0;
    for (List<String> lines : items) {
      Vec box = new Vec(x + BOX / 2, y + LEADING / 2);
      inks.add(Symbol.of(Symbol.Kind.TICK_BOX, box, BOX, Palette.INK));
      for (String line : lines) {
        inks.add(Text.start(new Vec(x + INDENT, y + 3.5), line, style));
        y += LEADING;
      }
      y += AFTER;
    }
    return y;
  }
}
