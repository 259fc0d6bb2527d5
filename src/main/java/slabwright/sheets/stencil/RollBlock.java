package slabwright.sheets.stencil;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;
import slabwright.drawing.Text;
import slabwright.figures.RollDiagram;
import slabwright.shape.Vec;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.Slice;
import slabwright.sheets.page.TypeSizes;

/** The panels along the roll as wide as the column, with the roll's width in words. */
record RollBlock(RollDiagram diagram, SheetContext context) implements Block {
  @Override
  public List<Slice> slices(TypeSizes type, double width) {
    double k = type.k();
    double top = 2 * k;
    double scale = diagram.scale(width, 28 * k);
    double high = diagram.roll() * scale;
    List<Ink> inks = new ArrayList<>(diagram.inks(scale, top, 4.4 * k));
    String words = context.say("sheets.roll-block.along-the-roll", context.length(diagram.roll()));
    inks.add(Text.start(new Vec(0, top + high + 4 * k), words, type.small()));
    return List.of(new Slice(top + high + 7 * k, false, inks));
  }
}
