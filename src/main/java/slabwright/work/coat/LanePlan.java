package slabwright.work.coat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * Lanes in the order of rolling: cut in first, then lane by lane; each is left over floor that is
 * still dry, and the last one ends at the way out. All lanes together are the floor, each place
 * once.
 *
 * @param worstEdge the longest time from the start of a lane to the end of one that laps it
 * @param cutOff numbers of lanes that hang together with the way out by no floor at all
 */
public record LanePlan(List<Lane> lanes, Duration worstEdge, List<Integer> cutOff) {
  public LanePlan {
    lanes = List.copyOf(lanes);
    cutOff = List.copyOf(cutOff);
  }

  /**
   * The best of a few layouts: lanes along and across the floor's longest side, one side of the way
   * out first or both together; best keeps the edges wettest.
   */
  public static LanePlan of(LaneJob job) {
    if (job.floor().isEmpty()) {
      return new LanePlan(List.of(), Duration.ZERO, List.of());
    }
    double along = longestSide(job.floor().shells());
    List<LaneTrial> trials = new ArrayList<>();
    for (double angle : angles(along)) {
      LaneCells cells = new LaneCells(job.floor(), job.wayOut(), job.pitch(), angle);
      int start = cells.nearest(job.wayOut());
      for (LaneOrder.Side side : LaneOrder.Side.values()) {
        trials.add(new LaneTrial(job, cells, new LaneOrder(cells, start, side).rolling()));
      }
    }
    return trials.stream().min(LaneTrial.BEST_FIRST).orElseThrow().plan();
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

  /** When the last lane is done. */
  public Duration length() {
    return lanes.isEmpty() ? Duration.ZERO : lanes.get(lanes.size() - 1).to();
  }
}
