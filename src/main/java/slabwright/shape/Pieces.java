package slabwright.shape;

import java.util.IdentityHashMap;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.noding.SegmentString;

/**
 * The noded chains cut into straight pieces between corners, each with the input segment it came
 * from. Piece {@code p} runs from corner {@code from(p)} to corner {@code to(p)}.
 */
final class Pieces {
  private final PairTable corners = new PairTable();
  private final List<Chain> chains;
  private final Ints from = new Ints();
  private final Ints to = new Ints();
  private final Ints chain = new Ints();
  private final Ints segment = new Ints();

  /** The strings of one chain must come in the order in which they lie on it. */
  Pieces(List<Chain> chains, List<SegmentString> noded) {
    this.chains = chains;
    IdentityHashMap<Chain, Integer> numbers = new IdentityHashMap<>();
    for (Chain c : chains) {
      numbers.put(c, numbers.size());
    }
    int[] reached = new int[chains.size()];
    for (SegmentString string : noded) {
      int number = numbers.get((Chain) string.getData());
      reached[number] = cut(number, string.getCoordinates(), reached[number]);
    }
  }

  /**
   * Adds the string's pieces; {@code at} is the chain's point last passed, and so is the result.
   */
  private int cut(int number, Coordinate[] points, int at) {
    Chain c = chains.get(number);
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

  PairTable corners() {
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
