package slabwright.shape;

import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/** Tells again and again whether points come near one region; its boundary is indexed once. */
public final class RegionDistance {
  private final Region region;
  private final IndexedFacetDistance boundary;

  /** Asks about this region. */
  public RegionDistance(Region region) {
    this.region = region;
    boundary = new IndexedFacetDistance(region.geometry());
  }

  /** Whether the point lies within it or no farther than {@code mm} from it. */
  public boolean isWithin(Vec p, double mm) {
    return !region.isEmpty() && (region.contains(p) || boundary.isWithinDistance(Jts.point(p), mm));
  }
}
