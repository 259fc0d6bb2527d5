package slabwright.shape;

import slabwright.shape.ints.IntGroups;
import slabwright.shape.ints.PairNumbering;

/**
 * The distinct edges of an arrangement. Pieces that lie on one another share an edge, and what they
 * do to the winding number of their layer is summed; an edge that changes no layer is left out.
 */
final class ArrangementEdges {
  private final NodedSegments pieces;
  private final int[] low;
  private final int[] high;
  private final IntGroups lying;

  ArrangementEdges(NodedSegments pieces) {
    this.pieces = pieces;
    PairNumbering table = new PairNumbering();
    int[] edgeOf = new int[pieces.size()];
    for (int p = 0; p < edgeOf.length; p++) {
      int a = pieces.from(p);
      int b = pieces.to(p);
      edgeOf[p] = table.numberOf(Math.min(a, b), Math.max(a, b));
    }
    int[] renamed = keepEffective(new IntGroups(table.size(), edgeOf), table.size());
    int count = 0;
    for (int e : renamed) {
      count = Math.max(count, e + 1);
    }
    low = new int[count];
    high = new int[count];
    for (int e = 0; e < renamed.length; e++) {
      if (renamed[e] >= 0) {
        low[renamed[e]] = (int) table.first(e);
        high[renamed[e]] = (int) table.second(e);
      }
    }
    for (int p = 0; p < edgeOf.length; p++) {
      edgeOf[p] = renamed[edgeOf[p]];
    }
    lying = new IntGroups(count, edgeOf);
  }

  private int[] keepEffective(IntGroups onEdge, int edges) {
    int[] renamed = new int[edges];
    int count = 0;
    for (int e = 0; e < edges; e++) {
      renamed[e] = changesSomeLayer(onEdge, e) ? count++ : -1;
    }
    return renamed;
  }

  private boolean changesSomeLayer(IntGroups onEdge, int edge) {
    for (int i = onEdge.start(edge); i < onEdge.end(edge); i++) {
      int sum = 0;
      for (int j = onEdge.start(edge); j < onEdge.end(edge); j++) {
        if (pieces.layer(onEdge.member(i)) == pieces.layer(onEdge.member(j))) {
          sum += direction(onEdge.member(j));
        }
      }
      if (sum != 0) {
        return true;
      }
    }
    return false;
  }

  int size() {
    return low.length;
  }

  /** The corner with the lower number; the edge's own direction runs from here. */
  int low(int edge) {
    return low[edge];
  }

  int high(int edge) {
    return high[edge];
  }

  /** The pieces lying on each edge. */
  IntGroups lying() {
    return lying;
  }

  NodedSegments pieces() {
    return pieces;
  }

  /** +1 when the piece runs in its edge's direction, else -1: winding on the left less right. */
  int direction(int piece) {
    return pieces.from(piece) < pieces.to(piece) ? 1 : -1;
  }
}
