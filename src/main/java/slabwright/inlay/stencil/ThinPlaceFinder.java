package slabwright.inlay.stencil;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.shape.near.BoxIndex;

/**
 * Finds where a region is narrower than a limit between two opposed pieces of its boundary.
 *
 * <p>From many points of the boundary the largest disc that lies inside and touches there is grown.
 * The region is thin where such a disc is narrower than the limit and its two touching points face
 * each other within 45° of straight across. So the corners of a square are not thin (their discs
 * touch at 90°), the waist of an hourglass is, and a point sharper than 45° is a needle, which is
 * reported apart. Discs that hang together are one place. Known limit: between sample points a
 * third of the limit apart a neck may be found up to a few per cent too wide.
 */
final class ThinPlaceFinder {
  private static final double FACING = -Math.cos(Math.toRadians(45));
  private static final double NEEDLE = 45;

  /** Sine of the least turn that counts as a corner, 10°. */
  private static final double FLAT = -0.17;

  private final Region region;
  private final double limit;
  private final SegmentGrid grid;
  private final List<InscribedDisc> thin = new ArrayList<>();

  private ThinPlaceFinder(Region region, double limit) {
    this.region = region;
    this.limit = limit;
    this.grid = new SegmentGrid(limit);
  }

  /** The thin places, the narrowest first. */
  public static List<ThinPlace> in(Region region, double limit) {
    ThinPlaceFinder search = new ThinPlaceFinder(region, limit);
    search.run();
    BoxIndex<SharpCorner> needles =
        BoxIndex.of(SharpCornerFinder.sharper(region, NEEDLE), SharpCorner::at);
    return new InscribedDiscGroups(search.thin, limit)
        .narrowest().stream()
            .filter(b -> !isAtOne(needles, b.centre(), limit))
            .map(b -> new ThinPlace(b.centre(), 2 * b.radius()))
            .sorted(Comparator.comparingDouble(ThinPlace::width))
            .toList();
  }

  private static boolean isAtOne(BoxIndex<SharpCorner> needles, Vec at, double limit) {
    return needles.any(Bounds.of(List.of(at)).grown(limit), n -> n.at().distanceTo(at) < limit);
  }

  /** Every thin disc found, many for each place. */
  static List<InscribedDisc> discs(Region region, double limit) {
    ThinPlaceFinder search = new ThinPlaceFinder(region, limit);
    search.run();
    return search.thin;
  }

  private void run() {
    List<Ring> rings = region.rings();
    rings.forEach(this::index);
    rings.forEach(this::sample);
  }

  private void index(Ring ring) {
    for (int i = 0; i < ring.points().size(); i++) {
      grid.add(side(ring.points(), i));
    }
  }

  /** Rings run with the region to their left. */
  private void sample(Ring ring) {
    List<Vec> points = ring.points();
    for (int i = 0; i < points.size(); i++) {
      BoundarySegment side = side(points, i);
      Vec inward = side.b().minus(side.a()).unit().left();
      int steps = Math.max(1, (int) Math.ceil(side.length() / (limit / 3)));
      for (int k = 0; k < steps; k++) {
        grow(side.a().towards(side.b(), (k + 0.5) / steps), inward);
      }
      Vec next = points.get((i + 2) % points.size()).minus(side.b()).unit().left();
      if (inward.cross(next) < FLAT) {
        fan(side.b(), inward, next);
      }
    }
  }

  /** At a corner that points into the region, every direction between its sides' normals. */
  private void fan(Vec corner, Vec from, Vec to) {
    for (int k = 0; k <= 4; k++) {
      Vec way = from.times(4 - k).plus(to.times(k)).unit();
      if (way.length() > 0) {
        grow(corner, way);
      }
    }
  }

  private void grow(Vec p, Vec inward) {
    InscribedDisc least = null;
    for (BoundarySegment side : grid.near(p)) {
      least = InscribedDisc.touching(p, inward, side, least, limit / 2);
    }
    if (least != null && least.facing() <= FACING) {
      thin.add(least);
    }
  }

  private static BoundarySegment side(List<Vec> points, int i) {
    return BoundarySegment.of(points.get(i), points.get((i + 1) % points.size()));
  }
}
