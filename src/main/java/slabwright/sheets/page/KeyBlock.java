package slabwright.sheets.page;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Colour;
import slabwright.drawing.FillStyle;
import slabwright.drawing.Ink;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Symbol;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * The key: what each pattern, line and sign on the drawing means; never parted over two pages where
 * one holds it.
 */
public record KeyBlock(List<Entry> entries) implements Block {
  private static final double SWATCH = 12;

  public KeyBlock {
    entries = List.copyOf(entries);
  }

  /** One meaning; its sample is drawn about the origin in a box 12 by 6, times the type size. */
  public record Entry(Sample sample, String words) {}

  /** Draws a sample whose middle is at the point. */
  interface Sample {
    List<Ink> at(Vec middle, double k);
  }

  public static KeyBlock of(List<Entry> entries) {
    return new KeyBlock(entries);
  }

  public static Entry look(FillStyle look, String words) {
    return new Entry((m, k) -> look.on(List.of(box(m, k))), words);
  }

  public static Entry line(Pen pen, String words) {
    return new Entry(
        (m, k) ->
            List.of(
                Stroke.line(
                    pen, m.plus(new Vec(-SWATCH / 2 * k, 0)), m.plus(new Vec(SWATCH / 2 * k, 0)))),
        words);
  }

  public static Entry sign(Symbol.Kind kind, Colour colour, String words) {
    return new Entry((m, k) -> List.of(Symbol.of(kind, m, 5 * k, colour)), words);
  }

  /** A letter or number in a ring. */
  public static Entry ringed(String inRing, String words) {
    return ringed(inRing, words, 5.4);
  }

  /** The same in a ring of this width at type size 1. */
  public static Entry ringed(String inRing, String words, double width) {
    return new Entry((m, k) -> List.of(Symbol.number(m, inRing, width * k)), words);
  }

  private static Ring box(Vec m, double k) {
    double w = SWATCH / 2 * k;
    double h = 2.9 * k;
    return Ring.rectangle(m.x() - w, m.y() - h, m.x() + w, m.y() + h);
  }

  @Override
  public List<Slice> slices(TypeSizes type, double width) {
    double k = type.k();
    double x = (SWATCH + 4) * k;
    List<Slice> slices = new ArrayList<>();
    for (int e = 0; e < entries.size(); e++) {
      Entry entry = entries.get(e);
      List<String> lines = TextMeasure.wrap(entry.words(), type.body(), width - x);
      double height = Math.max(7.4 * k, lines.size() * type.leading() + 2.6 * k);
      double middle = height / 2;
      List<Ink> inks = new ArrayList<>(entry.sample().at(new Vec(SWATCH / 2 * k, middle), k));
      double first = middle + 1.15 * k - (lines.size() - 1) * type.leading() / 2;
      for (int i = 0; i < lines.size(); i++) {
        Vec at = new Vec(x, first + i * type.leading());
        inks.add(Text.start(at, lines.get(i), type.body()));
      }
      slices.add(new Slice(height, e < entries.size() - 1, inks));
    }
    return slices;
  }
}
