package slabwright.work.coat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/**
 * Which lanes a batch is rolled on.
 *
 * @param batch its number
 * @param from number of the first lane
 * @param to number of the lane in which it runs out
 * @param begins when it goes onto the floor, from the coat's first lane
 */
public record BatchLanes(int batch, int from, int to, Duration begins) {

  /** The same, timed from a later start. */
  BatchLanes from(Duration start) {
    return new BatchLanes(batch, from, to, begins.minus(start));
  }

  /** Every batch along the lanes, in order. */
  public static List<BatchLanes> of(Batches batches, LanePlan lanes) {
    List<BatchLanes> all = new ArrayList<>();
    double before = 0;
    for (Batches.Batch b : batches.list()) {
      double after = before + b.area();
      all.add(
          new BatchLanes(
              b.number(), laneAt(before, lanes), laneAt(after - 1, lanes), reached(before, lanes)));
      before = after;
    }
    return List.copyOf(all);
  }

  /** The lane in which an area, in mm² from the start, is reached. */
  private static int laneAt(double mm2, LanePlan lanes) {
    double done = 0;
    for (Lane lane : lanes.lanes()) {
      done += lane.region().area();
      if (done > mm2) {
        return lane.number();
      }
    }
    return lanes.lanes().size();
  }

  /** When an area, in mm² from the start, is reached. */
  private static Duration reached(double mm2, LanePlan lanes) {
    double done = 0;
    for (Lane lane : lanes.lanes()) {
      double area = lane.region().area();
      if (done + area > mm2) {
        double share = (mm2 - done) / area;
        long millis = Math.round(lane.to().minus(lane.from()).toMillis() * share);
        return lane.from().plusMillis(millis);
      }
      done += area;
    }
    return lanes.length();
  }
}
