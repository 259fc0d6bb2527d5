package slabwright.floor;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * Free-standing ends: where a thin wall, partition or plinth ends in the room and hand tools go
 * round it. An end is a straight piece of edge of at most 300 mm between two outside corners that
 * is shorter than the edges at both its sides. A square post has no ends, a thin wall that stands
 * free has two; rounded ends are not told apart from columns.
 */
final class FreeEnds {
  private static final double MOST = 300;

  private FreeEnds() {}

  /** The middles of all ends along the edge of a floor. */
  static List<Vec> of(Region floor) {
    List<Vec> ends = new ArrayList<>();
    for (Ring ring : floor.rings()) {
      int n = ring.points().size();
      for (int i = 0; i < n && n > 3; i++) {
        Vec before = ring.points().get((i + n - 1) % n);
        Vec from = ring.points().get(i);
        Vec to = ring.points().get((i + 1) % n);
        Vec after = ring.points().get((i + 2) % n);
        double end = from.distanceTo(to);
        boolean shorter = end < 0.95 * before.distanceTo(from) && end < 0.95 * to.distanceTo(after);
        if (end <= MOST && shorter && isOutside(before, from, to) && isOutside(from, to, after)) {
          ends.add(from.towards(to, 0.5));
        }
      }
    }
    return List.copyOf(ends);
  }

  private static boolean isOutside(Vec before, Vec at, Vec after) {
    return FloorCorners.turn(before, at, after) < -FloorCorners.LEAST_TURN;
  }
}
