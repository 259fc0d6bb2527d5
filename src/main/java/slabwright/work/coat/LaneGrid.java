package slabwright.work.coat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * The ways lanes of one width can be laid on a floor, before anything is known of rates: along and
 * across the floor's longest side, one side of the way out first or both together. Costly, so made
 * once for all products that are rolled with lanes of the same width.
 */
public final class LaneGrid {
  /** One layout: the cells, and the order they are rolled in. */
  record Layout(LaneCells cells, List<LaneOrder.Step> order) {}

  private final Region floor;
  private final Vec wayOut;
  private final double pitch;
  private final List<Layout> layouts = new ArrayList<>();

  /**
   * Lays lanes of a width.
   *
   * @param floor to roll, mm
   * @param wayOut where the crew leaves, mm
   * @param pitch width of a lane: the roller less its lap, mm
   */
  public LaneGrid(Region floor, Vec wayOut, double pitch) {
    if (!(pitch > 0)) {
      throw new IllegalArgumentException("lanes have a width");
    }
    this.floor = floor;
    this.wayOut = wayOut;
    this.pitch = pitch;
    if (!floor.isEmpty()) {
      for (double angle : angles(longestSide(floor.shells()))) {
        add(new LaneCells(floor, wayOut, pitch, angle));
      }
    }
  }

  private void add(LaneCells cells) {
    int start = cells.nearest(wayOut);
    for (LaneOrder.Side side : LaneOrder.Side.values()) {
      layouts.add(new Layout(cells, new LaneOrder(cells, start, side).rolling()));
    }
  }

  List<Layout> layouts() {
    return layouts;
  }

  double pitch() {
    return pitch;
  }

  Vec wayOut() {
    return wayOut;
  }

  /** The directions tried, each as the turn that makes lanes upright; a right angle stays exact. */
  private static Set<Double> angles(double along) {
    double folded = along - Math.floor(along / (Math.PI / 2) + 1e-9) * (Math.PI / 2);
    double turn = Math.abs(folded) < 1e-6 ? 0 : folded;
    return new LinkedHashSet<>(List.of(turn, turn + Math.PI / 2));
  }

  private static double longestSide(List<Ring> shells) {
    double longest = 0;
    double angle = 0;
    for (Ring ring : shells) {
      List<Vec> p = ring.points();
      for (int i = 0; i < p.size(); i++) {
        Vec side = p.get((i + 1) % p.size()).minus(p.get(i));
        if (side.length() > longest) {
          longest = side.length();
          angle = side.angle();
        }
      }
    }
    return angle;
  }

  /** Equal for the same floor, way out and width: all else follows from them. */
  @Override
  public boolean equals(Object o) {
    return o instanceof LaneGrid g
        && pitch == g.pitch
        && wayOut.equals(g.wayOut)
        && floor.equals(g.floor);
  }

  @Override
  public int hashCode() {
    return Objects.hash(wayOut, pitch);
  }
}
