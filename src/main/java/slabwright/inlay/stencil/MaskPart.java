package slabwright.inlay.stencil;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.SegmentGeometry;
import slabwright.shape.Vec;

/** One connected part of a mask, ready to be asked for nearest points. */
final class MaskPart {
  private static final int SAMPLES = 96;

  private final Region region;
  private final Region filled;
  private final Bounds bounds;
  private final List<BoundarySegment> sides = new ArrayList<>();

  MaskPart(Region region) {
    this.region = region;
    this.filled = region.holes().isEmpty() ? Region.empty() : Region.of(region.shells().get(0));
    this.bounds = region.bounds();
    for (Ring ring : region.rings()) {
      List<Vec> p = ring.points();
      for (int i = 0; i < p.size(); i++) {
        sides.add(BoundarySegment.of(p.get(i), p.get((i + 1) % p.size())));
      }
    }
  }

  /** Points evenly spaced along the outer outline. */
  List<Vec> samples() {
    Ring shell = region.shells().get(0);
    double step = shell.length() / SAMPLES;
    List<Vec> found = new ArrayList<>();
    double next = 0;
    double at = 0;
    for (int i = 0; i < shell.points().size(); i++) {
      Vec a = shell.points().get(i);
      Vec b = shell.points().get((i + 1) % shell.points().size());
      double length = a.distanceTo(b);
      for (; next < at + length && found.size() < SAMPLES; next += step) {
        found.add(a.towards(b, (next - at) / length));
      }
      at += length;
    }
    return found;
  }

  /** Whether the other part stands in a hole of this one. */
  boolean encloses(MaskPart other) {
    Vec p = other.sides.get(0).a();
    return bounds.contains(p) && filled.contains(p);
  }

  /** Centre of area. */
  Vec centroid() {
    Vec origin = sides.get(0).a();
    double twice = 0;
    Vec sum = Vec.ZERO;
    for (BoundarySegment s : sides) {
      Vec a = s.a().minus(origin);
      Vec b = s.b().minus(origin);
      double cross = a.cross(b);
      twice += cross;
      sum = sum.plus(a.plus(b).times(cross));
    }
    return origin.plus(sum.times(1 / (3 * twice)));
  }

  boolean mayBeNearer(Vec p, double than) {
    double dx = Math.max(0, Math.max(bounds.minX() - p.x(), p.x() - bounds.maxX()));
    double dy = Math.max(0, Math.max(bounds.minY() - p.y(), p.y() - bounds.maxY()));
    return Math.hypot(dx, dy) < than;
  }

  /** The point of the boundary nearest to {@code p}. */
  Vec nearest(Vec p) {
    Vec best = sides.get(0).a();
    double least = Double.POSITIVE_INFINITY;
    for (BoundarySegment s : sides) {
      Vec q = SegmentGeometry.nearest(s.a(), s.b(), p);
      double d = p.distanceTo(q);
      if (d < least) {
        least = d;
        best = q;
      }
    }
    return best;
  }
}
