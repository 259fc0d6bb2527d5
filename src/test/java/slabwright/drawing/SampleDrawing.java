package slabwright.drawing;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** A drawing with every ink in it, for the painters' tests. */
public final class SampleDrawing {
  static final Region ELL =
      Region.of(Ring.of(0, 0, 8000, 0, 8000, 3000, 5000, 3000, 5000, 6000, 0, 6000));

  private SampleDrawing() {}

  public static Drawing site() {
    List<Ink> inks = new ArrayList<>();
    double x = 200;
    int colour = 0;
    for (HatchPattern pattern : HatchPattern.values()) {
      FillStyle look = FillStyle.of(pattern, Palette.PRINT.get(++colour));
      inks.addAll(look.on(Region.rectangle(new Bounds(x, 300, x + 700, 2700))));
      x += 850;
    }
    inks.add(Stroke.outline(Pen.of(0.9, Palette.INK), ELL));
    TextStyle bold = TextStyle.bold(3.2);
    inks.add(new Dimension(new Vec(0, 6000), new Vec(5000, 6000), 8, "5.000 m", bold));
    inks.add(new Dimension(new Vec(0, 0), new Vec(0, 6000), 8, "6.000 m", bold));
    inks.add(new Dimension(new Vec(8000, 0), new Vec(5000, 6000), -8, "6.708 m", bold));
    inks.add(new Dimension(new Vec(5000, 3000), new Vec(5300, 3000), 8, "300 mm", bold));
    int i = 0;
    for (Symbol.Kind kind : Symbol.Kind.values()) {
      Vec at = new Vec(400 + 600 * (i % 8), 5500 - 700 * (i / 8));
      inks.add(new Symbol(kind, at, 5.5, 0, Palette.INK, kind == Symbol.Kind.NUMBER ? "12" : ""));
      i++;
    }
    inks.add(Text.middle(new Vec(2500, 3600), "turned and large", bold.sized(300).onModel()));
    inks.add(
        Stroke.line(Pen.of(0.5, Palette.RED).dashed(2, 1.2), new Vec(2000, 0), new Vec(4000, 0)));
    return Drawing.of(CoordinateFrame.SITE, inks);
  }

  /** The toy at 1:50 in the middle of an A4 page. */
  public static Drawing page() {
    Drawing site = site();
    Drawing placed = View.centred(50, site.bounds(), new Bounds(0, 0, 210, 297)).place(site);
    return Drawing.paper(210, 297, placed.inks());
  }
}
