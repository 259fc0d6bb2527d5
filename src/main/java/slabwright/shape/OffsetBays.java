package slabwright.shape;

import java.util.ArrayList;
import java.util.List;

/**
 * What of a ring a disc touches that rolls along it, on the side to which the ring is offset: the
 * corners of bays that it rolls over have no say in the offset, however many they are.
 *
 * <p>A corner C between A and B is left out when the disc that touches A and B stays clear of C and
 * of the sides at it. Of two half circles of one radius that bulge the same way each is the higher
 * one on one side of one place only; where those about A and B meet, that about C is lower than
 * both, so it is so everywhere, and whatever C lies near to, A or B do too. Nor is the middle of
 * the disc in the triangle ABC, which is nowhere wider than A and B are apart: it would be too near
 * to a side at C, or to A when both are bays. All of it holds for bays made of bays.
 */
final class OffsetBays {
  /** Rings of fewer corners are offset as they are. */
  private static final int FEW = 1000;

  /** So many corners on a length of ring as long as the distance cross each other little. */
  private static final double SPARSE = 4;

  private final double distance;
  private final List<Gap> kept = new ArrayList<>();

  private OffsetBays(double distance) {
    this.distance = distance;
  }

  /**
   * A side of the ring, or a bay.
   *
   * @param leaving direction from its first corner to the middle of a disc that touches it there,
   *     as a multiple of the distance; for a side, to its right
   * @param arriving the same at its last corner
   */
  record Gap(Vec from, Vec to, Vec leaving, Vec arriving, boolean isSide) {
    static Gap side(Vec from, Vec to) {
      Vec right = to.minus(from).unit().left().times(-1);
      return new Gap(from, to, right, right, true);
    }
  }

  /** Whether a ring has so many corners for the distance that most of them lie in bays. */
  static boolean isRugged(Ring ring, double distance) {
    int corners = ring.points().size();
    return corners >= FEW && corners * Math.abs(distance) > SPARSE * ring.length();
  }

  /** The ring as sides and bays, one after the other, the last ending where the first begins. */
  static List<Gap> of(List<Vec> ring, double distance) {
    OffsetBays bays = new OffsetBays(distance);
    for (int i = 0; i < ring.size(); i++) {
      bays.add(Gap.side(ring.get(i), ring.get((i + 1) % ring.size())));
    }
    return bays.kept;
  }

  private void add(Gap side) {
    Gap next = side;
    while (!kept.isEmpty() && isRolledOver(kept.get(kept.size() - 1), next)) {
      next = bay(kept.remove(kept.size() - 1).from(), next.to());
    }
    kept.add(next);
  }

  private boolean isRolledOver(Gap before, Gap after) {
    Vec a = before.from();
    Vec c = before.to();
    Vec b = after.to();
    double mouth = a.distanceTo(b);
    if (mouth == 0 || mouth > Math.abs(distance) || b.minus(a).cross(c.minus(a)) * distance < 0) {
      return false;
    }
    Vec middle = middle(a, b);
    return isClear(before, a, c, middle) && isClear(after, b, c, middle);
  }

  /** Whether a disc about the middle that touches the end of a gap clears the rest of it. */
  private boolean isClear(Gap gap, Vec end, Vec corner, Vec middle) {
    return gap.isSide()
        ? corner.minus(end).dot(end.minus(middle)) >= 0
        : corner.distanceTo(middle) >= Math.abs(distance);
  }

  /** Of the disc that touches both points, on the side to which the ring is offset. */
  private Vec middle(Vec a, Vec b) {
    double half = a.distanceTo(b) / 2;
    double high = Math.sqrt(distance * distance - half * half);
    Vec right = b.minus(a).unit().left().times(-Math.signum(distance));
    return a.towards(b, 0.5).plus(right.times(high));
  }

  private Gap bay(Vec a, Vec b) {
    Vec middle = middle(a, b);
    Vec leaving = middle.minus(a).times(1 / distance);
    return new Gap(a, b, leaving, middle.minus(b).times(1 / distance), false);
  }
}
