package slabwright.work.coat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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

  /** Those of one section after the other; empty when any section has none. */
  static Optional<LanePlan> joined(List<Optional<LanePlan>> sections) {
    if (sections.stream().anyMatch(Optional::isEmpty)) {
      return Optional.empty();
    }
    List<Lane> lanes = new ArrayList<>();
    List<Integer> cutOff = new ArrayList<>();
    Duration before = Duration.ZERO;
    Duration worst = Duration.ZERO;
    for (LanePlan s : sections.stream().flatMap(Optional::stream).toList()) {
      int first = lanes.size();
      Duration start = before;
      s.cutOff().forEach(n -> cutOff.add(first + n));
      s.lanes().forEach(l -> lanes.add(l.after(first, start)));
      before = before.plus(s.length());
      worst = worst.compareTo(s.worstEdge()) < 0 ? s.worstEdge() : worst;
    }
    return Optional.of(new LanePlan(lanes, worst, cutOff));
  }

  /** The same order at another pace; how old an edge gets stays that of all who are at it. */
  LanePlan timed(LaneParameters job) {
    List<Lane> retimed = new ArrayList<>();
    double done = 0;
    for (Lane l : lanes) {
      double after = done + l.region().area();
      retimed.add(
          new Lane(
              l.number(), l.region(), l.walk(), job.timeFor(done), job.timeFor(after), l.narrow()));
      done = after;
    }
    return new LanePlan(retimed, worstEdge, cutOff);
  }

  /** When the last lane is done. */
  public Duration length() {
    return lanes.isEmpty() ? Duration.ZERO : lanes.get(lanes.size() - 1).to();
  }
}
