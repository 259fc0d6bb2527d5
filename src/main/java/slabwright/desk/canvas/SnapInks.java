package slabwright.desk.canvas;

import java.util.ArrayList;
import java.util.List;
import slabwright.desk.model.input.Snap;
import slabwright.desk.tool.OverlayScale;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextStyle;
import slabwright.shape.Arcs;
import slabwright.shape.Line;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.words.Words;

/** Shows where a touch is drawn to and why: a ring, the lines it holds on to, a word. */
final class SnapInks {
  private SnapInks() {}

  /** A small cross: on the grid and on nothing else. */
  private static List<Ink> grid(Vec at, double r) {
    Pen pen = Pen.of(0.35, Palette.RED);
    return List.of(
        Stroke.line(pen, at.plus(new Vec(-r, 0)), at.plus(new Vec(r, 0))),
        Stroke.line(pen, at.plus(new Vec(0, -r)), at.plus(new Vec(0, r))));
  }

  static List<Ink> of(Snap s, OverlayScale paper, Words words) {
    List<Ink> inks = new ArrayList<>();
    if (s.kind() == Snap.Kind.FREE) {
      return inks;
    }
    if (s.kind() == Snap.Kind.GRID) {
      return grid(s.at(), 1.3 * paper.mm());
    }
    for (Line guide : s.guides()) {
      inks.add(Stroke.lines(Pen.of(0.3, Palette.RED).dashed(1, 0.8), List.of(guide)));
    }
    Ring ring = Arcs.circle(s.at(), 1.8 * paper.mm(), 0.05 * paper.mm());
    inks.add(Stroke.rings(Pen.of(0.55, Palette.RED), List.of(ring)));
    Vec beside = s.at().plus(new Vec(2.8 * paper.mm(), 2.2 * paper.mm()));
    s.kind()
        .word()
        .map(words::say)
        .ifPresent(w -> inks.add(Text.start(beside, w, TextStyle.plain(2.6).in(Palette.RED))));
    return inks;
  }
}
