package slabwright.shape;

import java.util.Arrays;
import slabwright.shape.ints.IntGroups;
import slabwright.shape.ints.IntList;
import slabwright.shape.ints.PairNumbering;
import slabwright.shape.ints.UnionFind;

/**
 * The closed walks of half-edges along faces, and the connected components they belong to. Each
 * component has one outer cycle, seen from the face around it; every other cycle encloses a face.
 */
final class Cycles {
  private final HalfEdges halves;
  private final int[] cycleOf;
  private final IntList firsts = new IntList();
  private final UnionFind components;
  private final int[] leftmost;

  Cycles(HalfEdges halves) {
    this.halves = halves;
    cycleOf = new int[halves.size()];
    Arrays.fill(cycleOf, -1);
    for (int h = 0; h < cycleOf.length; h++) {
      if (cycleOf[h] < 0) {
        trace(h);
      }
    }
    components = new UnionFind(firsts.size());
    for (int h = 0; h < cycleOf.length; h += 2) {
      components.join(cycleOf[h], cycleOf[HalfEdges.twin(h)]);
    }
    leftmost = new int[firsts.size()];
    findLeftmost();
  }

  private void trace(int start) {
    int h = start;
    do {
      cycleOf[h] = firsts.size();
      h = halves.next(h);
    } while (h != start);
    firsts.add(start);
  }

  private void findLeftmost() {
    Arrays.fill(leftmost, -1);
    for (int h = 0; h < cycleOf.length; h++) {
      int component = component(cycleOf[h]);
      int best = leftmost[component];
      if (best < 0 || halves.before(halves.origin(h), best)) {
        leftmost[component] = halves.origin(h);
      }
    }
  }

  int size() {
    return firsts.size();
  }

  /** Some half-edge of the cycle. */
  int first(int cycle) {
    return firsts.get(cycle);
  }

  int cycleOf(int halfEdge) {
    return cycleOf[halfEdge];
  }

  /** The component of a cycle, named by one of its cycles. */
  int component(int cycle) {
    return components.root(cycle);
  }

  /** The leftmost corner of a component, the lowest of several. */
  int leftmost(int component) {
    return leftmost[component];
  }

  /** All edges at the leftmost corner lie right of it, so the wedge after the last holds west. */
  int outer(int component) {
    IntGroups around = halves.around();
    return cycleOf[around.member(around.end(leftmost[component]) - 1)];
  }

  /** Twice the enclosed area in square grid steps; negative for most outer cycles. */
  double twiceArea(int cycle) {
    PairNumbering corners = halves.corners();
    int start = firsts.get(cycle);
    long x0 = corners.first(halves.origin(start));
    long y0 = corners.second(halves.origin(start));
    double sum = 0;
    for (int h = halves.next(start); h != start; h = halves.next(h)) {
      double ax = corners.first(halves.origin(h)) - x0;
      double ay = corners.second(halves.origin(h)) - y0;
      double bx = corners.first(halves.target(h)) - x0;
      double by = corners.second(halves.target(h)) - y0;
      sum += ax * by - ay * bx;
    }
    return sum;
  }
}
