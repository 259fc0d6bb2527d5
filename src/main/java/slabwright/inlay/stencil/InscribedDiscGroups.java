package slabwright.inlay.stencil;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import slabwright.shape.Vec;
import slabwright.shape.ints.IntList;

/** Discs whose centres lie near each other, taken as one place. */
final class InscribedDiscGroups {
  private final List<InscribedDisc> balls;
  private final double reach;
  private final int[] leader;
  private final Map<Long, IntList> cells = new HashMap<>();

  InscribedDiscGroups(List<InscribedDisc> balls, double reach) {
    this.balls = balls;
    this.reach = reach;
    this.leader = new int[balls.size()];
    for (int i = 0; i < leader.length; i++) {
      leader[i] = i;
      join(i);
      cells.computeIfAbsent(cell(i, 0, 0), k -> new IntList()).add(i);
    }
  }

  /** The narrowest disc of each group. */
  List<InscribedDisc> narrowest() {
    Map<Integer, InscribedDisc> best = new HashMap<>();
    for (int i = 0; i < leader.length; i++) {
      best.merge(find(i), balls.get(i), InscribedDisc::smaller);
    }
    return List.copyOf(best.values());
  }

  /** Most that lie near are of its group already, so that is asked before how far they lie. */
  private void join(int i) {
    for (int dx = -1; dx <= 1; dx++) {
      for (int dy = -1; dy <= 1; dy++) {
        IntList cell = cells.get(cell(i, dx, dy));
        for (int k = 0; cell != null && k < cell.size(); k++) {
          int other = find(cell.get(k));
          if (other != i && isNear(balls.get(i).centre(), balls.get(cell.get(k)).centre())) {
            leader[other] = i;
          }
        }
      }
    }
  }

  private boolean isNear(Vec a, Vec b) {
    return Math.abs(a.x() - b.x()) <= reach
        && Math.abs(a.y() - b.y()) <= reach
        && a.distanceTo(b) <= reach;
  }

  private int find(int i) {
    int at = i;
    while (leader[at] != at) {
      leader[at] = leader[leader[at]];
      at = leader[at];
    }
    return at;
  }

  /** Cells that share a number by chance are looked at together, which does no harm. */
  private long cell(int i, int dx, int dy) {
    Vec c = balls.get(i).centre();
    long column = (long) Math.floor(c.x() / reach) + dx;
    return column * 4_000_037L + (long) Math.floor(c.y() / reach) + dy;
  }
}
