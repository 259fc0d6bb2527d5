package slabwright.shape;

import java.util.ArrayList;
import java.util.List;

/**
 * Growing by far more than the boundary's detail, in steps of which each is as long as all before
 * it: every step rounds off bays, so the next has less to do, and growing by one length and then
 * another is growing by both.
 *
 * <p>Before each step of length d, bays are filled whose mouth is at most m wide: no disc of radius
 * d that is clear of the region comes farther into them than the height of an arc of that radius
 * over the mouth, m² / 8d, so nothing is reached that is farther away than d and that. Corners
 * within as much of a straight line are dropped too.
 */
final class Growth {
  private static final int STEPS = 4;

  /** Keeps the check of a dropped run short. */
  private static final int LONGEST_RUN = 64;

  /**
   * Straightening, the arcs of a curve and the grid, in shares of the tolerance, and one to spare.
   */
  private static final double SLACK = 4;

  private Growth() {}

  /** The boundary stays within the tolerance of the true one. */
  static Region of(Region region, double mm, double tolerance) {
    Region grown = region;
    double share = tolerance / STEPS / 3;
    double step = mm / (1 << (STEPS - 1));
    double done = 0;
    while (done < mm && !grown.isEmpty()) {
      GrownCells.Kept kept = GrownCells.of(grown, step, SLACK * share);
      List<Ring> curves = new ArrayList<>(kept.asTheyAre());
      for (Ring ring : kept.toGrow()) {
        List<Vec> coarse = straightened(bayless(ring.points(), Math.sqrt(8 * step * share)), share);
        if (coarse.size() > 1) {
          curves.add(OffsetCurve.of(new Ring(coarse), step, share));
        }
      }
      grown = RingFill.positive(curves);
      done += step;
      step = done;
    }
    return grown;
  }

  /**
   * The ring without its inner corners over mouths at most so wide. Each corner left out adds a
   * triangle to what the ring runs round, and never takes anything away.
   */
  static List<Vec> bayless(List<Vec> ring, double mouth) {
    List<Vec> kept = new ArrayList<>(ring.size());
    for (Vec next : ring) {
      while (kept.size() > 1 && isBay(kept, next, mouth)) {
        kept.remove(kept.size() - 1);
      }
      kept.add(next);
    }
    return kept;
  }

  private static boolean isBay(List<Vec> kept, Vec next, double mouth) {
    Vec corner = kept.get(kept.size() - 1);
    Vec before = kept.get(kept.size() - 2);
    return before.distanceTo(next) <= mouth && corner.minus(before).cross(next.minus(corner)) <= 0;
  }

  private static List<Vec> straightened(List<Vec> ring, double tolerance) {
    List<Vec> kept = new ArrayList<>(ring.size());
    int anchor = 0;
    for (int i = 0; i < ring.size(); i++) {
      Vec next = ring.get((i + 1) % ring.size());
      if (i == 0 || i - anchor > LONGEST_RUN || !isStraight(ring, anchor, i, next, tolerance)) {
        kept.add(ring.get(i));
        anchor = i;
      }
    }
    return kept.size() < 3 ? ring : kept;
  }

  private static boolean isStraight(
      List<Vec> ring, int anchor, int last, Vec next, double tolerance) {
    Vec along = next.minus(ring.get(anchor));
    double reach = tolerance * along.length();
    for (int k = anchor + 1; k <= last; k++) {
      Vec off = ring.get(k).minus(ring.get(anchor));
      double forward = off.dot(along);
      if (Math.abs(along.cross(off)) > reach || forward < 0 || forward > along.dot(along)) {
        return false;
      }
    }
    return true;
  }
}
