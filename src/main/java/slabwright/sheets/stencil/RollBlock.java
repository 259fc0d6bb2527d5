package slabwright.sheets.stencil;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Fill;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextStyle;
import slabwright.figures.StencilInks;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.Slice;
import slabwright.sheets.page.TypeSizes;

/**
 * The panels one after the other along the roll, to scale, as wide as the column.
 *
 * @param cut the panels that are cut
 * @param roll full width of the film, mm
 */
record RollBlock(PanelPlan plan, List<Panel> cut, double roll, SheetContext context)
    implements Block {
  @Override
  public List<Slice> slices(TypeSizes type, double width) {
    double k = type.k();
    double length = cut.stream().mapToDouble(p -> plan.turn().along(p.box())).sum();
    double scale = Math.min(width / Math.max(1, length), 28 * k / roll);
    double high = roll * scale;
    double top = 2 * k;
    List<Ink> inks = new ArrayList<>();
    Bounds film = new Bounds(0, top, length * scale, top + high);
    inks.add(Fill.of(Palette.FIELD, film));
    inks.add(Stroke.rings(Pen.of(0.2, Palette.SOFT), List.of(StencilInks.ring(film))));
    double x = 0;
    for (Panel p : cut) {
      x += panel(inks, p, x, film.middle().y(), scale, type);
    }
    String words = context.say("sheets.roll-block.along-the-roll", context.length(roll));
    inks.add(Text.start(new Vec(0, film.maxY() + 4 * k), words, type.small()));
    return List.of(new Slice(top + high + 7 * k, false, inks));
  }

  private double panel(
      List<Ink> inks, Panel p, double x, double middle, double scale, TypeSizes type) {
    double along = plan.turn().along(p.box()) * scale;
    double across = plan.turn().across(p.box()) * scale;
    Bounds b = new Bounds(x, middle - across / 2, x + along, middle + across / 2);
    inks.add(Fill.of(Palette.WHITE, b));
    inks.add(Stroke.rings(Pen.of(0.35, Palette.PURPLE), List.of(StencilInks.ring(b))));
    TextStyle style = TextStyle.bold(Math.min(4.4 * type.k(), across * 0.6));
    inks.add(Text.centred(b.middle(), p.name(), style, 0));
    return along;
  }
}
