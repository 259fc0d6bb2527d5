package slabwright.shape;

import java.util.Collection;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/** Regions from simple rings by a fill rule. */
final class RingFill {
  private RingFill() {}

  static Geometry fill(Collection<Ring> rings, FillRule rule) {
    int how = rule == FillRule.NONZERO ? OverlayNG.UNION : OverlayNG.SYMDIFFERENCE;
    Geometry sum = Jts.FACTORY.createPolygon();
    for (Ring ring : rings) {
      Coordinate[] closed = Jts.closed(ring);
      if (closed.length >= 4) {
        sum = Overlay.run(sum, Jts.FACTORY.createPolygon(closed), how);
      }
    }
    return sum;
  }
}
