package slabwright.figures;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Drawing;
import slabwright.drawing.Fill;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextStyle;
import slabwright.inlay.ComputedInlay;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.panel.StripDirection;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** The panels one after the other along the roll, with what is weeded out of them. */
public final class RollDiagram {
  private RollDiagram() {}

  /**
   * A drawing on paper.
   *
   * @param usable width of the roll, mm
   * @param width of the drawing, mm of paper
   */
  public static Drawing of(ComputedInlay answer, PanelPlan p, double usable, double width) {
    List<Panel> panels = p.all();
    double length = panels.stream().mapToDouble(b -> p.turn(b).along(b.box())).sum();
    double k = Math.min(width / Math.max(1, length), 22 / usable);
    List<Ink> inks = new ArrayList<>();
    Bounds film = new Bounds(0, 0, width, usable * k);
    inks.add(Fill.of(Palette.FIELD, film));
    double at = 0;
    for (int i = 0; i < panels.size(); i++) {
      Panel panel = panels.get(i);
      inks.addAll(panel(panel, answer.cutOut().get(i), p.turn(panel), at, k));
      at += p.turn(panel).along(panel.box());
    }
    Ring rim = Ring.rectangle(film.minX(), film.minY(), film.maxX(), film.maxY());
    inks.add(Stroke.rings(Pen.of(0.2, Palette.RULE), List.of(rim)));
    return Drawing.paper(width, usable * k, inks);
  }

  private static List<Ink> panel(
      Panel panel, Region open, StripDirection turn, double at, double k) {
    Bounds b = panel.box();
    Affine lay =
        turn == StripDirection.ACROSS
            ? Affine.move(-b.minX() + at, -b.minY()).then(Affine.scale(k, k))
            : new Affine(0, -1, 1, 0, -b.minY() + at, b.maxX()).then(Affine.scale(k, k));
    Ring box = Ring.rectangle(b.minX(), b.minY(), b.maxX(), b.maxY()).map(lay);
    List<Ink> inks = new ArrayList<>();
    inks.add(Fill.of(Palette.WHITE, box));
    inks.add(
        new Fill(open.rings().stream().map(r -> r.map(lay)).toList(), Palette.tint(Palette.RED)));
    inks.add(Stroke.rings(Pen.of(0.35, Palette.PURPLE), List.of(box)));
    Vec mid = box.bounds().middle();
    inks.add(Text.centred(mid, panel.name(), TextStyle.bold(3.6), 0));
    return inks;
  }
}
