package slabwright.work.coat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;

/**
 * The order in which cells are rolled. A set of cells grows from the one at the way out, always by
 * a cell that touches it; rolling takes them away in the opposite order. So whatever is not yet
 * rolled hangs together with the way out, and nobody crosses wet floor.
 */
final class LaneOrder {
  /** Which side of the way out is rolled first, when lanes lie on both. */
  enum Side {
    NEITHER,
    LEFT,
    RIGHT
  }

  /** A cell, and whether it hangs on by a neck too narrow to walk or by nothing at all. */
  record Step(int cell, boolean narrow, boolean cutOff) {}

  private record Reach(int cell, int far, boolean narrow) {}

  /** A step through a neck counts as a longer way, so that a wide way round is preferred. */
  private static final int WIDE = 2;

  private static final int NECK = 3;

  private final LaneCells floor;
  private final int start;
  private final Side first;
  private final Map<Integer, List<LaneCells.Contact>> touching = new HashMap<>();

  LaneOrder(LaneCells floor, int start, Side first) {
    this.floor = floor;
    this.start = start;
    this.first = first;
    for (LaneCells.Contact c : floor.contacts()) {
      touching.computeIfAbsent(c.a(), k -> new ArrayList<>()).add(c);
      touching.computeIfAbsent(c.b(), k -> new ArrayList<>()).add(c);
    }
  }

  /** Every cell once, the first to roll first. */
  List<Step> rolling() {
    boolean[] grown = new boolean[floor.cells().size()];
    List<Step> growth = new ArrayList<>();
    grow(start, false, grown, growth);
    for (int i = 0; i < grown.length; i++) {
      if (!grown[i]) {
        grow(i, true, grown, growth);
      }
    }
    Collections.reverse(growth);
    return growth;
  }

  private void grow(int from, boolean cutOff, boolean[] grown, List<Step> growth) {
    PriorityQueue<Reach> reached =
        new PriorityQueue<>(
            Comparator.<Reach>comparingInt(r -> sideOf(r.cell()))
                .thenComparing(Reach::far)
                .thenComparing(Reach::cell));
    reached.add(new Reach(from, 0, false));
    while (!reached.isEmpty()) {
      Reach next = reached.poll();
      if (!grown[next.cell()]) {
        grown[next.cell()] = true;
        growth.add(new Step(next.cell(), next.narrow(), cutOff));
        for (LaneCells.Contact c : touching.getOrDefault(next.cell(), List.of())) {
          int other = c.a() == next.cell() ? c.b() : c.a();
          reached.add(new Reach(other, next.far() + cost(c), c.isNeck()));
        }
      }
    }
  }

  private static int cost(LaneCells.Contact c) {
    if (c.isAtTheWayOut()) {
      return 0;
    }
    return c.isNeck() ? NECK : WIDE;
  }

  /** What grows last is rolled first. */
  private int sideOf(int cell) {
    int strip = floor.cells().get(cell).strip();
    int middle = floor.cells().get(start).strip();
    return switch (first) {
      case NEITHER -> 0;
      case LEFT -> strip < middle ? 1 : 0;
      case RIGHT -> strip > middle ? 1 : 0;
    };
  }
}
