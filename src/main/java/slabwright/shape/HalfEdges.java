package slabwright.shape;

import java.util.stream.IntStream;
import slabwright.shape.ints.IntGroups;
import slabwright.shape.ints.PairNumbering;

/**
 * Each edge as two half-edges, {@code 2e} from its low to its high corner and {@code 2e+1} back,
 * sorted around each corner. The face of a half-edge lies on its left.
 */
final class HalfEdges {
  /** Nearly all corners have two edges, few more than four: those are sorted by insertion. */
  private static final int FEW = 24;

  private final ArrangementEdges edges;
  private final PairNumbering corners;
  private final IntGroups around;
  private final int[] next;

  HalfEdges(ArrangementEdges edges) {
    this.edges = edges;
    corners = edges.pieces().corners();
    int[] origins = new int[edges.size() * 2];
    for (int h = 0; h < origins.length; h++) {
      origins[h] = origin(h);
    }
    around = new IntGroups(corners.size(), origins);
    next = new int[origins.length];
    for (int corner = 0; corner < corners.size(); corner++) {
      sort(corner);
      link(corner);
    }
  }

  int size() {
    return next.length;
  }

  ArrangementEdges edges() {
    return edges;
  }

  PairNumbering corners() {
    return corners;
  }

  static int twin(int h) {
    return h ^ 1;
  }

  int origin(int h) {
    return (h & 1) == 0 ? edges.low(h >> 1) : edges.high(h >> 1);
  }

  int target(int h) {
    return origin(h ^ 1);
  }

  /** The half-edge that follows along the same face. */
  int next(int h) {
    return next[h];
  }

  /** Half-edges that leave each corner, counter-clockwise, from just after west. */
  IntGroups around() {
    return around;
  }

  /** Corners in lexicographic order: x first, then y. */
  boolean before(int corner, int other) {
    long x = corners.first(corner);
    long ox = corners.first(other);
    return x < ox || (x == ox && corners.second(corner) < corners.second(other));
  }

  /** +1 when corner c lies left of the line from a to b, -1 right, 0 on it. Exact. */
  int side(int a, int b, int c) {
    long ax = corners.first(a);
    long ay = corners.second(a);
    return crossSign(
        corners.first(b) - ax,
        corners.second(b) - ay,
        corners.first(c) - ax,
        corners.second(c) - ay);
  }

  private void sort(int corner) {
    if (around.size(corner) > FEW) {
      sortMany(corner);
      return;
    }
    int start = around.start(corner);
    for (int i = start + 1; i < around.end(corner); i++) {
      int h = around.member(i);
      int at = i;
      while (at > start && compareDirections(around.member(at - 1), h) > 0) {
        around.setMember(at, around.member(at - 1));
        at--;
      }
      around.setMember(at, h);
    }
  }

  private void sortMany(int corner) {
    int start = around.start(corner);
    int[] sorted =
        IntStream.range(start, around.end(corner))
            .map(around::member)
            .boxed()
            .sorted(this::compareDirections)
            .mapToInt(Integer::intValue)
            .toArray();
    for (int i = 0; i < sorted.length; i++) {
      around.setMember(start + i, sorted[i]);
    }
  }

  /** Coming in along the twin of h, the same face goes on with the half-edge just right of h. */
  private void link(int corner) {
    for (int i = around.start(corner); i < around.end(corner); i++) {
      int right = i == around.start(corner) ? around.end(corner) - 1 : i - 1;
      next[twin(around.member(i))] = around.member(right);
    }
  }

  private int compareDirections(int g, int h) {
    long gx = corners.first(target(g)) - corners.first(origin(g));
    long gy = corners.second(target(g)) - corners.second(origin(g));
    long hx = corners.first(target(h)) - corners.first(origin(h));
    long hy = corners.second(target(h)) - corners.second(origin(h));
    int halves = Integer.compare(half(gx, gy), half(hx, hy));
    return halves != 0 ? halves : -crossSign(gx, gy, hx, hy);
  }

  private static int half(long dx, long dy) {
    if (dy < 0) {
      return 0;
    }
    return dy == 0 && dx < 0 ? 2 : 1;
  }

  /** Sign of {@code ax * by - ay * bx}, in 128 bits. */
  static int crossSign(long ax, long ay, long bx, long by) {
    int high = Long.compare(Math.multiplyHigh(ax, by), Math.multiplyHigh(ay, bx));
    return high != 0 ? high : Long.compareUnsigned(ax * by, ay * bx);
  }
}
