package slabwright.work.coat;

import java.util.ArrayList;
import java.util.List;

/**
 * Which lanes a batch is rolled on.
 *
 * @param batch its number
 * @param from number of the first lane
 * @param to number of the lane in which it runs out
 */
public record BatchLanes(int batch, int from, int to) {

  /** Every batch along the lanes, in order. */
  public static List<BatchLanes> of(Batches batches, LanePlan lanes) {
    List<BatchLanes> all = new ArrayList<>();
    double before = 0;
    for (Batches.Batch b : batches.list()) {
      double after = before + b.area();
      all.add(new BatchLanes(b.number(), laneAt(before, lanes), laneAt(after - 1, lanes)));
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
}
