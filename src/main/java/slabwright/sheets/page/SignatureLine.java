package slabwright.sheets.page;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.shape.Vec;

/** A line to sign and date on, with who signs under it. */
public record SignatureLine(String who, String date) implements Block {
  /** With the word for the date in the sheet's language. */
  public static SignatureLine of(String who, SheetContext context) {
    return new SignatureLine(who, context.say("sheets.signature-line.date"));
  }

  @Override
  public List<Slice> slices(TypeSizes type, double width) {
    double k = type.k();
    double y = 13 * k;
    Pen pen = Pen.of(0.25, Palette.INK);
    double split = width * 0.7;
    List<Ink> inks = new ArrayList<>();
    inks.add(Stroke.line(pen, new Vec(0, y), new Vec(split - 4, y)));
    inks.add(Stroke.line(pen, new Vec(split, y), new Vec(width, y)));
    String shown = TextMeasure.fitted(who, type.small(), split - 4);
    inks.add(Text.start(new Vec(0, y + 3.6 * k), shown, type.small()));
    inks.add(Text.start(new Vec(split, y + 3.6 * k), date, type.small()));
    return List.of(new Slice(y + 6 * k, false, inks));
  }
}
