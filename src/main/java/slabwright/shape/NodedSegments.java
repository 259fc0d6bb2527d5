package slabwright.shape;

import java.util.IdentityHashMap;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import slabwright.shape.ints.IntList;
import slabwright.shape.ints.PairNumbering;

/**
 * The noded chains cut into straight pieces between corners, each with the input segment it came
 * from. Piece {@code p} runs from corner {@code from(p)} to corner {@code to(p)}.
 */
final class NodedSegments {
  private final PairNumbering corners = new PairNumbering();
  private final List<GridChain> chains;
  private final IntList from = new IntList();
  private final IntList to = new IntList();
  private final IntList chain = new IntList();
  private final IntList segment = new IntList();

  /** The strings of one chain must come in the order in which they lie on it. */
  NodedSegments(List<GridChain> chains, List<NodedRun> noded) {
    this.chains = chains;
    IdentityHashMap<GridChain, Integer> numbers = new IdentityHashMap<>();
    for (GridChain c : chains) {
      numbers.put(c, numbers.size());
    }
    int[] reached = new int[chains.size()];
    for (NodedRun string : noded) {
      int number = numbers.get((GridChain) string.getData());
      reached[number] = cut(number, string.getCoordinates(), reached[number]);
    }
  }

  /**
   * Adds the string's pieces; {@code at} is the chain's point last passed, and so is the result.
   */
  private int cut(int number, Coordinate[] points, int at) {
    GridChain c = chains.get(number);
    for (int i = 1; i < points.length; i++) {
      if (!points[i].equals2D(points[i - 1])) {
        from.add(corner(points[i - 1]));
        to.add(corner(points[i]));
        chain.add(number);
        segment.add(c.segmentInto(Math.min(at + 1, c.steps().length - 1)));
      }
      if (at + 1 < c.steps().length && points[i].equals2D(c.steps()[at + 1])) {
        at++;
      }
    }
    return at;
  }

  private int corner(Coordinate c) {
    return corners.numberOf((long) c.x, (long) c.y);
  }

  PairNumbering corners() {
    return corners;
  }

  int size() {
    return from.size();
  }

  int from(int piece) {
    return from.get(piece);
  }

  int to(int piece) {
    return to.get(piece);
  }

  /** Position of the piece's layer in the list of layers. */
  int layer(int piece) {
    return chains.get(chain.get(piece)).layer();
  }

  int ring(int piece) {
    return chains.get(chain.get(piece)).ring();
  }

  int segment(int piece) {
    return segment.get(piece);
  }
}
