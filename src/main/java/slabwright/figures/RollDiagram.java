package slabwright.figures;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Fill;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextStyle;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.panel.StripDirection;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/**
 * The panels one after the other along the roll, to scale; the desk and the sheets draw the same.
 *
 * @param panels that are cut
 * @param weeded what is taken out of each of them; empty where that is not shown
 * @param roll full width of the film, mm
 */
public record RollDiagram(PanelPlan plan, List<Panel> panels, List<Region> weeded, double roll) {
  public RollDiagram {
    panels = List.copyOf(panels);
    weeded = List.copyOf(weeded);
  }

  /** Paper mm to a mm of film, so that all panels fit the room (mm of paper). */
  public double scale(double width, double high) {
    return Math.min(width / Math.max(1, length()), high / roll);
  }

  private double length() {
    return panels.stream().mapToDouble(p -> plan.turn(p).along(p.box())).sum();
  }

  /**
   * Inks on paper.
   *
   * @param top upper edge of the film, mm of paper
   * @param name largest size of a panel's name, mm
   */
  public List<Ink> inks(double scale, double top, double name) {
    Bounds film = new Bounds(0, top, length() * scale, top + roll * scale);
    List<Ink> inks = new ArrayList<>();
    inks.add(Fill.of(Palette.FIELD, film));
    inks.add(Stroke.rings(Pen.of(0.2, Palette.SOFT), List.of(StencilInks.ring(film))));
    double x = 0;
    for (int i = 0; i < panels.size(); i++) {
      Bounds box = panels.get(i).box();
      StripDirection turn = plan.turn(panels.get(i));
      double along = turn.along(box) * scale;
      double across = turn.across(box) * scale;
      double middle = film.middle().y();
      Bounds b = new Bounds(x, middle - across / 2, x + along, middle + across / 2);
      inks.add(Fill.of(Palette.WHITE, b));
      if (!weeded.isEmpty()) {
        inks.add(open(weeded.get(i), onto(b, box, turn, scale)));
      }
      inks.add(Stroke.rings(Pen.of(0.35, Palette.PURPLE), List.of(StencilInks.ring(b))));
      TextStyle style = TextStyle.bold(Math.min(name, across * 0.6));
      inks.add(Text.centred(b.middle(), panels.get(i).name(), style, 0));
      x += along;
    }
    return inks;
  }

  private static Ink open(Region region, Affine lay) {
    return new Fill(
        region.rings().stream().map(r -> r.map(lay)).toList(), Palette.tint(Palette.RED));
  }

  private static Affine onto(Bounds paper, Bounds box, StripDirection turn, double scale) {
    Affine first =
        turn == StripDirection.ACROSS
            ? Affine.move(-box.minX(), -box.minY())
            : new Affine(0, -1, 1, 0, -box.minY(), box.maxX());
    Vec at = new Vec(paper.minX(), paper.minY());
    return first.then(Affine.scale(scale, scale)).then(Affine.move(at.x(), at.y()));
  }
}
