package slabwright.sheets.page;

import java.util.List;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.shape.Line;
import slabwright.shape.Vec;

/** A line to lay a ruler on: 100 mm on metric paper, 4 in on inch paper. */
final class CheckLine {
  private CheckLine() {}

  static double length(PaperSize paper) {
    return paper.inches() ? 4 * 25.4 : 100;
  }

  /** The line with its left end at the point, and what it says above it. */
  static List<Ink> at(Vec at, SheetContext context) {
    PaperSize paper = context.page().paper();
    TypeSizes type = context.type();
    double length = length(paper);
    double bar = 1.5;
    Vec end = at.plus(new Vec(length, 0));
    Line left = Line.of(at.plus(new Vec(0, -bar)), at.plus(new Vec(0, bar)));
    Line right = Line.of(end.plus(new Vec(0, -bar)), end.plus(new Vec(0, bar)));
    String words = context.say("sheets.check-line.measures", paper.inches() ? "4 in" : "100 mm");
    Vec middle = at.plus(new Vec(length / 2, -1.5));
    return List.of(
        Stroke.lines(Pen.of(0.35, Palette.INK), List.of(Line.of(at, end))),
        Stroke.lines(Pen.of(0.2, Palette.INK), List.of(left, right)),
        Text.middle(middle, words, type.small().in(Palette.INK)));
  }
}
