package slabwright.shape;

import java.util.TreeSet;
import java.util.stream.IntStream;
import slabwright.shape.ints.IntGroups;

/**
 * Finds the face around each component with one ray down from its leftmost corner. A line sweeps
 * over the corners from left to right and keeps the edges it cuts sorted from low to high, so each
 * ray is one look-up: O(n log n) in all, however deep the nesting.
 */
final class Nesting {
  private final HalfEdges halves;
  private final Cycles cycles;
  private final int[] faceOfCycle;
  private final int[] componentAt;
  private final TreeSet<Integer> cut = new TreeSet<>(this::compare);

  Nesting(HalfEdges halves, Cycles cycles, int[] faceOfCycle) {
    this.halves = halves;
    this.cycles = cycles;
    this.faceOfCycle = faceOfCycle;
    componentAt = new int[halves.corners().size()];
    for (int c = 0; c < cycles.size(); c++) {
      if (cycles.component(c) == c) {
        componentAt[cycles.leftmost(c)] = c + 1;
      }
    }
  }

  /** Fills in the face of every outer cycle. */
  void run() {
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

  /** The component of the edge below starts further left, so its faces are known already. */
  private int faceBelow(int corner) {
    Integer below = cut.lower(~corner);
    if (below == null) {
      return 0;
    }
    int h = 2 * below;
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
