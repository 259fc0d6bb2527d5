package slabwright.shape;

import java.util.TreeSet;
import java.util.stream.IntStream;
import slabwright.shape.ints.IntGroups;
import slabwright.shape.ints.IntList;

/**
 * Finds the face around each component with one ray down from its leftmost corner. Of many, a line
 * sweeps over the corners from left to right and keeps the edges it cuts sorted from low to high,
 * so each ray is one look-up: O(n log n) in all, however deep the nesting.
 */
final class Nesting {
  private static final int FEW = 40;

  private final HalfEdges halves;
  private final Cycles cycles;
  private final int[] faceOfCycle;
  private final int[] componentAt;
  private final IntList components = new IntList();
  private final TreeSet<Integer> cut = new TreeSet<>(this::compare);

  Nesting(HalfEdges halves, Cycles cycles, int[] faceOfCycle) {
    this.halves = halves;
    this.cycles = cycles;
    this.faceOfCycle = faceOfCycle;
    componentAt = new int[halves.corners().size()];
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
    IntStream.range(0, componentAt.length)
        .filter(corner -> halves.around().size(corner) > 0)
        .boxed()
        .sorted((a, b) -> a.equals(b) ? 0 : halves.before(a, b) ? -1 : 1)
        .forEach(this::pass);
  }

  private void pass(int corner) {
    IntGroups around = halves.around();
    for (int i = around.start(corner); i < around.end(corner); i++) {
      if (!startsAt(corner, around.member(i))) {
        cut.remove(around.member(i) >> 1);
      }
    }
    if (componentAt[corner] > 0) {
      faceOfCycle[cycles.outer(componentAt[corner] - 1)] = faceBelow(corner);
    }
    for (int i = around.start(corner); i < around.end(corner); i++) {
      if (startsAt(corner, around.member(i))) {
        cut.add(around.member(i) >> 1);
      }
    }
  }

  private boolean startsAt(int corner, int halfEdge) {
    return halves.before(corner, halves.target(halfEdge));
  }

  private int faceBelow(int corner) {
    Integer below = cut.lower(~corner);
    return faceAbove(below == null ? -1 : below);
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

  /** Orders edges on the sweep line from low to high; {@code ~c} stands for the corner c alone. */
  private int compare(int a, int b) {
    if (a == b) {
      return 0;
    }
    if (a < 0) {
      return halves.side(left(b), right(b), ~a);
    }
    if (b < 0 || !halves.before(left(b), left(a))) {
      return b < 0 ? -halves.side(left(a), right(a), ~b) : -sideOf(a, b);
    }
    return sideOf(b, a);
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
