package slabwright.shape;

import java.util.Collection;
import org.locationtech.jts.geom.Geometry;

/** Regions from any rings by a fill rule. */
final class RingFill {
  private RingFill() {}

  static Geometry fill(Collection<Ring> rings, FillRule rule) {
    throw new IllegalStateException("written next: " + rings.size() + rule);
  }
}
