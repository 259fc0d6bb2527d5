package slabwright.inlay.stencil;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import slabwright.shape.Vec;

/** Discs whose centres lie near each other, taken as one place. */
final class InscribedDiscGroups {
  private final List<InscribedDisc> balls;
  private final double reach;
  private final int[] leader;
  private final Map<List<Long>, List<Integer>> cells = new HashMap<>();

  InscribedDiscGroups(List<InscribedDisc> balls, double reach) {
    this.balls = balls;
    this.reach = reach;
    this.leader = new int[balls.size()];
    for (int i = 0; i < leader.length; i++) {
      leader[i] = i;
      join(i);
      cells.computeIfAbsent(cell(i, 0, 0), k -> new ArrayList<>()).add(i);
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

  private void join(int i) {
    for (int dx = -1; dx <= 1; dx++) {
      for (int dy = -1; dy <= 1; dy++) {
        for (int other : cells.getOrDefault(cell(i, dx, dy), List.of())) {
          if (balls.get(i).centre().distanceTo(balls.get(other).centre()) <= reach) {
            leader[find(other)] = find(i);
          }
        }
      }
    }
  }

  private int find(int i) {
    int at = i;
    while (leader[at] != at) {
      leader[at] = leader[leader[at]];
      at = leader[at];
    }
    return at;
  }

  private List<Long> cell(int i, int dx, int dy) {
    Vec c = balls.get(i).centre();
    return List.of((long) Math.floor(c.x() / reach) + dx, (long) Math.floor(c.y() / reach) + dy);
  }
}
