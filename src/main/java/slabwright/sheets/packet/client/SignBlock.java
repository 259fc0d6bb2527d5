package slabwright.sheets.packet.client;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.shape.Vec;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.Slice;
import slabwright.sheets.page.TypeSizes;

/** A sentence in full over the line where it is signed and dated. */
record SignBlock(String sentence, SheetContext context) implements Block {
  private static final double ROOM = 9;

  @Override
  public List<Slice> slices(TypeSizes type, double width) {
    List<Ink> inks = new ArrayList<>();
    double y = 0;
    for (String line : TextMeasure.wrap(sentence, type.body(), width)) {
      y += type.leading();
      inks.add(Text.start(new Vec(0, y - 1.6), line, type.body()));
    }
    y += ROOM;
    double split = width * 0.68;
    Pen pen = Pen.of(0.25, Palette.INK);
    inks.add(Stroke.line(pen, new Vec(0, y), new Vec(split - 4, y)));
    inks.add(Stroke.line(pen, new Vec(split, y), new Vec(width, y)));
    String name = context.say("sheets.sign-block.signature");
    inks.add(Text.start(new Vec(0, y + 4.2), name, type.small()));
    String date = context.say("sheets.signature-line.date");
    inks.add(Text.start(new Vec(split, y + 4.2), date, type.small()));
    return List.of(new Slice(y + 6, false, inks));
  }
}
