package slabwright.sheets.packet.office;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Symbol;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.drawing.TextStyle;
import slabwright.shape.Vec;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Slice;
import slabwright.sheets.page.TypeSizes;

/**
 * A question, why it is asked, and a line to write the answer on.
 *
 * @param open whether it still wants an answer; else what is known stands under it
 */
record AskBlock(String question, String why, boolean open) implements Block {
  private static final double ANSWER = 0.4;
  private static final double INDENT = 7;

  @Override
  public List<Slice> slices(TypeSizes type, double width) {
    double left = width * (1 - ANSWER) - 6;
    List<Ink> inks = new ArrayList<>();
    double y = lines(inks, question, type.body(), INDENT, left - INDENT, 4.6);
    if (open) {
      double behind = INDENT + TextMeasure.width(question, type.body()) + 3;
      boolean fits = behind + TextMeasure.width(why, type.small()) <= left;
      y =
          fits
              ? Math.max(y, lines(inks, why, type.small(), behind, left - behind + 1, 4.6))
              : lines(inks, why, type.small(), INDENT, left - INDENT, y);
      inks.add(Symbol.of(Symbol.Kind.TICK_BOX, new Vec(2.4, 3.2), 4.2, Palette.INK));
      double foot = Math.max(y - 2.4, 8);
      inks.add(
          Stroke.line(Pen.of(0.25, Palette.INK), new Vec(left + 6, foot), new Vec(width, foot)));
      return List.of(new Slice(Math.max(y, 9) + 0.6, false, inks));
    }
    double known = lines(inks, why, type.small(), INDENT, width - INDENT, y);
    inks.add(Text.start(new Vec(0.6, 4.6), "✓", type.strong()));
    return List.of(new Slice(Math.max(y, known) + 1, false, inks));
  }

  private static double lines(
      List<Ink> inks, String said, TextStyle style, double x, double width, double from) {
    double y = from;
    if (said.isBlank()) {
      return y;
    }
    for (String line : TextMeasure.wrap(said, style, width)) {
      inks.add(Text.start(new Vec(x, y), line, style));
      y += style.size() * 1.42;
    }
    return y;
  }
}
