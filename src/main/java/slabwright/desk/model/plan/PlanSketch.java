package slabwright.desk.model.plan;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.CoordinateFrame;
import slabwright.drawing.Drawing;
import slabwright.drawing.Fill;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.figures.MarkStyles;
import slabwright.shape.Arcs;
import slabwright.shape.Bounds;
import slabwright.shape.Ring;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Inlay;
import slabwright.site.Mark;
import slabwright.site.OutlineShape;
import slabwright.site.Site;

/**
 * The floors of a plan in a few inks, so small that one knows it again.
 *
 * @param drawing in the site's frame
 * @param bounds of the floors, mm
 */
public record PlanSketch(Drawing drawing, Bounds bounds) {
  /** Flattening of curves, mm: much less than a dot of so small a picture. */
  private static final double TOLERANCE = 20;

  /** More marks than these are not told apart. */
  private static final int MOST_MARKS = 300;

  static PlanSketch of(Site site) {
    List<Ink> inks = new ArrayList<>();
    Bounds all = Bounds.EMPTY;
    for (FloorArea a : site.areas()) {
      if (a.outline().size() > 1) {
        Ring floor = OutlineShape.of(a.outline(), TOLERANCE).ring();
        all = all.including(floor.bounds());
        inks.add(Fill.of(Palette.WHITE, floor));
        a.marks().stream().limit(MOST_MARKS).forEach(m -> mark(m, inks));
        a.inlays().forEach(i -> inks.add(inlay(i)));
        inks.add(Stroke.rings(Pen.of(0.35, Palette.INK), List.of(floor)));
      }
    }
    return new PlanSketch(Drawing.of(CoordinateFrame.SITE, inks), all);
  }

  private static void mark(Mark m, List<Ink> inks) {
    if (!(m.form() instanceof Form.Trace)) {
      inks.add(Fill.of(MarkStyles.colour(m.kind().type()), m.form().region(TOLERANCE)));
    }
  }

  private static Ink inlay(Inlay i) {
    return Fill.of(Palette.TEAL, Arcs.circle(i.middle().vec(), i.width().mm() / 2, TOLERANCE));
  }
}
