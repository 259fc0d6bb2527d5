package slabwright.sheets.page;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Colour;
import slabwright.drawing.Fill;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.shape.Bounds;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * A boxed note that people must not miss. Never split.
 *
 * @param line its colour: amber to take care, red to stop
 */
public record CautionBlock(String head, String words, Colour line) implements Block {
  /** To take care. */
  public CautionBlock(String head, String words) {
    this(head, words, Palette.AMBER);
  }

  /** To stop: nothing begins before this is in order. */
  public static CautionBlock stop(String head, String words) {
    return new CautionBlock(head, words, Palette.RED);
  }

  @Override
  public List<Slice> slices(TypeSizes type, double width) {
    double k = type.k();
    double pad = 3.6 * k;
    List<String> lines = TextMeasure.wrap(words, type.body(), width - 2 * pad - 1.4);
    double height = 2 * pad + 5.2 * k + lines.size() * type.leading() - 1.4 * k;
    List<Ink> inks = new ArrayList<>();
    inks.add(Fill.of(Palette.tint(line), new Bounds(0, 0, width, height)));
    inks.add(Fill.of(line, new Bounds(0, 0, 1.4, height)));
    inks.add(Stroke.rings(Pen.of(0.3, line), List.of(Ring.rectangle(0, 0, width, height))));
    double x = pad + 1.4;
    inks.add(Text.start(new Vec(x, pad + 2.6 * k), head, type.subheading()));
    for (int i = 0; i < lines.size(); i++) {
      double y = pad + 8 * k + i * type.leading();
      inks.add(Text.start(new Vec(x, y), lines.get(i), type.body()));
    }
    return List.of(new Slice(height, false, inks), Slice.space(2.5 * k));
  }
}
