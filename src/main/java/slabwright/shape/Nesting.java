package slabwright.shape;

import java.util.Arrays;
import java.util.TreeSet;
import java.util.stream.IntStream;
import slabwright.shape.ints.IntGroups;
import slabwright.shape.ints.IntList;

/**
 * Finds the face around each component with one ray down from its leftmost corner. Of many, a line
 * sweeps over the corners from left to right and keeps what it cuts sorted from low to high, so
 * each ray is one look-up: O(n log n) in all, however deep the nesting. What is sorted are fronts:
 * edges that follow each other to the right with nothing else at the corners between, so that a dot
 * of fifty corners is two fronts and its sweep stops at two corners.
 */
final class Nesting {
  private static final int FEW = 40;

  private final HalfEdges halves;
  private final Cycles cycles;
  private final int[] faceOfCycle;
  private final int[] componentAt;
  private final IntList components = new IntList();
  private final TreeSet<Front> cut = new TreeSet<>(this::compare);

  /** The edge that each edge runs on with at its right end, -1 where a front ends. */
  private final int[] onward;

  private final Front[] endingWith;

  /** The corner that the sweep has come to, and what stands for it among fronts. */
  private int at;

  private final Front here = new Front(-1);

  /** Edges that run on to the right; the sweep is over one of them at a time. */
  private static final class Front {
    int edge;

    Front(int edge) {
      this.edge = edge;
    }
  }

  Nesting(HalfEdges halves, Cycles cycles, int[] faceOfCycle) {
    this.halves = halves;
    this.cycles = cycles;
    this.faceOfCycle = faceOfCycle;
    componentAt = new int[halves.corners().size()];
    onward = new int[halves.edges().size()];
    endingWith = new Front[onward.length];
    for (int c = 0; c < cycles.size(); c++) {
      if (cycles.component(c) == c) {
        componentAt[cycles.leftmost(c)] = c + 1;
        components.add(c);
      }
    }
  }

  /** Fills in the face of every outer cycle. */
  void run() {
    if (components.size() <= FEW) {
      scan();
    } else {
      sweep();
    }
  }

  /** Looks at every edge for each component: cheaper than to sort the edges where those are few. */
  private void scan() {
    IntStream.range(0, components.size())
        .map(components::get)
        .boxed()
        .sorted((a, b) -> a.equals(b) ? 0 : isLefter(a, b) ? -1 : 1)
        .forEach(c -> faceOfCycle[cycles.outer(c)] = faceAbove(edgeBelow(cycles.leftmost(c))));
  }

  private boolean isLefter(int component, int other) {
    return halves.before(cycles.leftmost(component), cycles.leftmost(other));
  }

  /** The highest edge below the corner, -1 for none. */
  private int edgeBelow(int corner) {
    int best = -1;
    for (int edge = 0; edge < halves.edges().size(); edge++) {
      if (halves.before(left(edge), corner)
          && halves.before(corner, right(edge))
          && halves.side(left(edge), right(edge), corner) > 0
          && (best < 0 || compare(best, edge) < 0)) {
        best = edge;
      }
    }
    return best;
  }

  private void sweep() {
    Arrays.fill(onward, -1);
    IntList stops = new IntList();
    for (int corner = 0; corner < componentAt.length; corner++) {
      if (!runsThrough(corner)) {
        stops.add(corner);
      }
    }
    IntStream.range(0, stops.size())
        .map(stops::get)
        .boxed()
        .sorted((a, b) -> a.equals(b) ? 0 : halves.before(a, b) ? -1 : 1)
        .forEach(this::pass);
  }

  /** Whether one edge comes in from the left and one leaves; notes which follows on which. */
  private boolean runsThrough(int corner) {
    IntGroups around = halves.around();
    if (around.size(corner) != 2) {
      return around.size(corner) == 0;
    }
    int one = around.member(around.start(corner));
    int other = around.member(around.start(corner) + 1);
    if (startsAt(corner, one) == startsAt(corner, other)) {
      return false;
    }
    int leaving = startsAt(corner, one) ? one : other;
    onward[(leaving == one ? other : one) >> 1] = leaving >> 1;
    return true;
  }

  private void pass(int corner) {
    at = corner;
    IntGroups around = halves.around();
    for (int i = around.start(corner); i < around.end(corner); i++) {
      if (!startsAt(corner, around.member(i))) {
        cut.remove(endingWith[around.member(i) >> 1]);
      }
    }
    if (componentAt[corner] > 0) {
      Front below = cut.lower(here);
      faceOfCycle[cycles.outer(componentAt[corner] - 1)] =
          faceAbove(below == null ? -1 : edgeOf(below));
    }
    for (int i = around.start(corner); i < around.end(corner); i++) {
      if (startsAt(corner, around.member(i))) {
        add(new Front(around.member(i) >> 1));
      }
    }
  }

  private void add(Front front) {
    int last = front.edge;
    while (onward[last] >= 0) {
      last = onward[last];
    }
    endingWith[last] = front;
    cut.add(front);
  }

  private boolean startsAt(int corner, int halfEdge) {
    return halves.before(corner, halves.target(halfEdge));
  }

  /** The component of the edge starts further left, so its faces are known already. */
  private int faceAbove(int edge) {
    if (edge < 0) {
      return 0;
    }
    int h = 2 * edge;
    boolean rightward = halves.before(halves.origin(h), halves.target(h));
    return faceOfCycle[cycles.cycleOf(rightward ? h : HalfEdges.twin(h))];
  }

  /** The edge of a front that the sweep is over. */
  private int edgeOf(Front front) {
    while (halves.before(right(front.edge), at)) {
      front.edge = onward[front.edge];
    }
    return front.edge;
  }

  /** Orders fronts on the sweep line from low to high. */
  private int compare(Front a, Front b) {
    if (a == b) {
      return 0;
    }
    if (a == here || b == here) {
      int edge = edgeOf(a == here ? b : a);
      int side = halves.side(left(edge), right(edge), at);
      return a == here ? side : -side;
    }
    return compare(edgeOf(a), edgeOf(b));
  }

  /** Orders edges that are both cut from low to high. */
  private int compare(int a, int b) {
    return halves.before(left(b), left(a)) ? sideOf(b, a) : -sideOf(a, b);
  }

  /** On which side of {@code edge} the other lies, which starts no further left. */
  private int sideOf(int edge, int other) {
    int side = halves.side(left(edge), right(edge), left(other));
    return side != 0 ? side : halves.side(left(edge), right(edge), right(other));
  }

  private int left(int edge) {
    int a = halves.edges().low(edge);
    int b = halves.edges().high(edge);
    return halves.before(a, b) ? a : b;
  }

  private int right(int edge) {
    int a = halves.edges().low(edge);
    int b = halves.edges().high(edge);
    return halves.before(a, b) ? b : a;
  }
}
