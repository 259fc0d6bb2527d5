package slabwright.work.coat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/** One layout with its times, to be held against others before its lanes are drawn. */
final class LaneCandidate {
  /** Nothing cut off, then the wettest edges, then the fewest lanes. */
  static final Comparator<LaneCandidate> BEST_FIRST =
      Comparator.comparing((LaneCandidate t) -> t.cutOff.size())
          .thenComparing(t -> t.worst)
          .thenComparing(t -> t.order.size());

  private final LaneParameters job;
  private final LaneCells cells;
  private final List<LaneOrder.Step> order;
  private final Duration[] from;
  private final Duration[] to;
  private final List<Integer> cutOff = new ArrayList<>();
  private final Duration worst;

  LaneCandidate(LaneParameters job, LaneCells cells, List<LaneOrder.Step> order) {
    this.job = job;
    this.cells = cells;
    this.order = order;
    this.from = new Duration[order.size()];
    this.to = new Duration[order.size()];
    time();
    this.worst = worstEdge();
  }

  private void time() {
    double done = 0;
    for (int i = 0; i < order.size(); i++) {
      int c = order.get(i).cell();
      from[c] = job.timeFor(done);
      done += cells.cells().get(c).region().area();
      to[c] = job.timeFor(done);
      if (order.get(i).cutOff()) {
        cutOff.add(i + 1);
      }
    }
  }

  /** From the start of the earlier of two touching lanes to the end of the later. */
  private Duration worstEdge() {
    return cells.contacts().stream()
        .map(c -> first(c.a(), c.b()) ? to[c.b()].minus(from[c.a()]) : to[c.a()].minus(from[c.b()]))
        .max(Comparator.naturalOrder())
        .orElse(Duration.ZERO);
  }

  private boolean first(int a, int b) {
    return from[a].compareTo(from[b]) < 0;
  }

  LanePlan plan() {
    List<Lane> lanes = new ArrayList<>();
    for (LaneOrder.Step step : order) {
      int c = step.cell();
      lanes.add(lane(step, lanes.size() + 1, from[c], to[c]));
    }
    return new LanePlan(lanes, worst, cutOff);
  }

  /** Turns a cell back into the site's frame and gives it a middle line to walk. */
  private Lane lane(LaneOrder.Step step, int number, Duration begins, Duration ends) {
    Region upright = cells.cells().get(step.cell()).region();
    Affine back = cells.back();
    Region region = back.b() == 0 && back.a() == 1 ? upright : upright.map(back);
    Line walk = walk(upright, back, job.grid().wayOut());
    return new Lane(number, region, walk, begins, ends, step.narrow());
  }

  private static Line walk(Region upright, Affine back, Vec wayOut) {
    Bounds b = upright.bounds();
    Vec low = back.apply(new Vec(b.middle().x(), b.minY()));
    Vec high = back.apply(new Vec(b.middle().x(), b.maxY()));
    boolean lowIsNearer = low.distanceTo(wayOut) < high.distanceTo(wayOut);
    return lowIsNearer ? Line.of(high, low) : Line.of(low, high);
  }
}
