package slabwright.desk.model.scene;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.figures.AreaInks;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.SegmentGeometry;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Inlay;
import slabwright.site.Mark;
import slabwright.site.OutlineShape;
import slabwright.site.Spot;

/**
 * A floor area that is not the one looked at, as it lies beside it: its outline, and its marks and
 * graphics as mere outlines.
 */
public record PaleFloor(FloorArea area, OutlineShape shape, Region floor, List<Ink> inks) {
  private static final Pen FINE = Pen.of(0.25, Palette.SOFT);

  public PaleFloor {
    inks = List.copyOf(inks);
  }

  static PaleFloor of(FloorArea area) {
    OutlineShape shape = OutlineShape.of(area.outline(), FloorPictureMaker.TOLERANCE);
    List<Ink> inks = new ArrayList<>();
    area.marks().forEach(m -> inks.add(outline(m)));
    area.inlays().forEach(i -> inks.add(outline(i)));
    inks.addAll(AreaInks.outline(area));
    return new PaleFloor(area, shape, shape.region(), inks);
  }

  private static Ink outline(Mark m) {
    if (m.form() instanceof Form.Trace t) {
      return Stroke.lines(FINE, List.of(new Line(t.path().stream().map(Spot::vec).toList())));
    }
    return m.form() instanceof Form.Place
        ? AreaInks.sign(m, m.form().spots().get(0).vec())
        : Stroke.rings(FINE, m.form().region(FloorPictureMaker.TOLERANCE).rings());
  }

  /** How high a graphic is nobody knows before it is read; a square tells its place. */
  private static Ink outline(Inlay i) {
    double r = i.width().mm() / 2;
    Vec m = i.middle().vec();
    return Stroke.rings(FINE, List.of(Ring.rectangle(m.x() - r, m.y() - r, m.x() + r, m.y() + r)));
  }

  /** The doorway nearest to a point within reach, mm. */
  public Optional<Doorway> doorwayAt(Vec p, double reach) {
    return area.doorways().stream()
        .filter(d -> away(d, p) <= reach)
        .min(Comparator.comparingDouble(d -> away(d, p)));
  }

  private double away(Doorway d, Vec p) {
    return SegmentGeometry.distance(shape.doorway(d), p);
  }
}
