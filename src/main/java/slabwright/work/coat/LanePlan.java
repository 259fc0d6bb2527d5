package slabwright.work.coat;

import java.time.Duration;
import java.util.List;

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

  /** The best of the grid's layouts: nothing cut off, then the wettest edges. */
  public static LanePlan of(LaneParameters job) {
    return job.grid().layouts().stream()
        .map(l -> new LaneCandidate(job, l.cells(), l.order()))
        .min(LaneCandidate.BEST_FIRST)
        .map(LaneCandidate::plan)
        .orElse(new LanePlan(List.of(), Duration.ZERO, List.of()));
  }

  /** When the last lane is done. */
  public Duration length() {
    return lanes.isEmpty() ? Duration.ZERO : lanes.get(lanes.size() - 1).to();
  }
}
