package slabwright.shape;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.CascadedPolygonUnion;
import slabwright.site.FloorArea;
import slabwright.site.Machine;
import slabwright.site.Mark;
import slabwright.site.OutlineShape;

/**
 * A floor as anyone would compute it with JTS: what stands is united and taken away, and for each
 * machine the rest is shrunk and grown again. No zones, no edges by class, no ways in.
 */
public final class PlainFloor {
  private PlainFloor() {}

  /**
   * The net area in mm²; what machines grind is worked out and dropped.
   *
   * @throws IllegalStateException when a machine would grind more than there is
   */
  public static double netAndReach(FloorArea area, double tolerance) {
    Geometry outline = OutlineShape.of(area.outline(), tolerance).region().geometry();
    List<Polygon> standing = new ArrayList<>();
    for (Mark mark : area.marks()) {
      Region form = mark.form().region(tolerance);
      if (!mark.kind().type().isFloor() && form.geometry() instanceof Polygon p) {
        standing.add(p);
      }
    }
    Geometry net = outline.difference(CascadedPolygonUnion.union(standing));
    for (Machine m : area.machines()) {
      double half = m.body().mm() / 2 + m.clearance().mm();
      Geometry ground = net.buffer(-half, 16).buffer(m.grinding().mm() / 2, 16);
      if (ground.getArea() > net.getArea()) {
        throw new IllegalStateException("more ground than floor");
      }
    }
    return net.getArea();
  }
}
