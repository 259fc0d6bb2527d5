package slabwright.shape;

import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/** Tells again and again whether something lies within one region; what it needs is kept. */
public final class PreparedRegion {
  private final PreparedGeometry prepared;

  /** Asks about this region. */
  public PreparedRegion(Region region) {
    prepared = PreparedGeometryFactory.prepare(region.geometry());
  }

  /** Whether all of the other region lies within it, its boundary included. */
  public boolean covers(Region other) {
    return prepared.covers(other.geometry());
  }

  /** Whether all of a line of two points and more lies within it, its boundary included. */
  public boolean covers(Line line) {
    return prepared.covers(Jts.line(line));
  }

  /** Whether the point lies within it or on its boundary. */
  public boolean covers(Vec p) {
    return prepared.covers(Jts.point(p));
  }
}
