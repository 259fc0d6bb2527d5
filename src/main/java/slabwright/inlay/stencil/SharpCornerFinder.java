package slabwright.inlay.stencil;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** Sharp corners of a region, seen over arms longer than a flattened curve's steps. */
final class SharpCornerFinder {
  private static final double SMOOTH = 0.05;

  private SharpCornerFinder() {}

  /** Corners whose inner angle is below {@code degrees}. */
  static List<SharpCorner> sharper(Region region, double degrees) {
    List<SharpCorner> found = new ArrayList<>();
    for (Ring ring : region.coarseRings(SMOOTH)) {
      List<Vec> p = ring.points();
      for (int i = 0; i < p.size(); i++) {
        Vec back = p.get((i + p.size() - 1) % p.size()).minus(p.get(i));
        Vec on = p.get((i + 1) % p.size()).minus(p.get(i));
        boolean bulges = on.cross(back) > 0;
        double angle = Math.toDegrees(Math.atan2(Math.abs(on.cross(back)), on.dot(back)));
        if (bulges && angle < degrees) {
          found.add(new SharpCorner(p.get(i), angle, Math.min(on.length(), back.length())));
        }
      }
    }
    return found;
  }
}
