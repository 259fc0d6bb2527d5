package slabwright.shape;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.noding.IntersectionAdder;
import org.locationtech.jts.noding.MCIndexNoder;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/** Set operations on the grid. Snap rounding keeps every result on it. */
final class Overlay {
  private Overlay() {}

  static Geometry run(Geometry a, Geometry b, int operation) {
    return polygonal(OverlayNG.overlay(a, b, operation, Jts.GRID));
  }

  /** What is left of one where nothing of the other comes near its boundary: noded as it is. */
  static Geometry difference(Geometry a, Geometry inside) {
    MCIndexNoder noder = new MCIndexNoder(new IntersectionAdder(new RobustLineIntersector()));
    return polygonal(OverlayNG.overlay(a, inside, OverlayNG.DIFFERENCE, Jts.GRID, noder));
  }

  /** Drops the lines and points that touching inputs leave behind. */
  static Geometry polygonal(Geometry g) {
    if (g instanceof Polygon) {
      return g;
    }
    List<Polygon> keep = new ArrayList<>();
    for (int i = 0; i < g.getNumGeometries(); i++) {
      if (g.getGeometryN(i) instanceof Polygon p && !p.isEmpty()) {
        keep.add(p);
      }
    }
    return keep.size() == 1
        ? keep.get(0)
        : Jts.FACTORY.createMultiPolygon(keep.toArray(new Polygon[0]));
  }
}
