package slabwright.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.function.Consumer;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.noding.Octant;
import org.locationtech.jts.noding.SegmentPointComparator;
import org.locationtech.jts.noding.SegmentString;

/**
 * A stretch of a chain that is split again and again until nothing crosses it. It knows which of
 * its edges came of its last split: only those can meet anything not looked at before.
 */
final class NodedRun implements SegmentString {
  private final GridChain chain;
  private final BitSet fresh = new BitSet();
  private final List<Split> splits = new ArrayList<>();
  private Coordinate[] points;

  private record Split(int edge, Coordinate at) {}

  NodedRun(Coordinate[] points, GridChain chain) {
    this.points = points;
    this.chain = chain;
  }

  /** Marks the place where an edge is to be split; the same place may be marked more than once. */
  void mark(int edge, Coordinate at) {
    splits.add(new Split(edge, at));
  }

  boolean isMarked() {
    return !splits.isEmpty();
  }

  boolean isFresh(int edge) {
    return fresh.get(edge);
  }

  boolean hasFresh() {
    return !fresh.isEmpty();
  }

  /** Splits the edges where marked; the pieces are fresh and all else is not. */
  void split() {
    fresh.clear();
    if (splits.isEmpty()) {
      return;
    }
    splits.sort(this::compare);
    List<Coordinate> next = new ArrayList<>(points.length + splits.size());
    int at = 0;
    for (int edge = 0; edge + 1 < points.length; edge++) {
      next.add(points[edge]);
      int first = next.size() - 1;
      for (; at < splits.size() && splits.get(at).edge == edge; at++) {
        if (!splits.get(at).at.equals2D(next.get(next.size() - 1))) {
          next.add(splits.get(at).at);
        }
      }
      if (next.size() - 1 > first) {
        fresh.set(first, next.size());
      }
    }
    next.add(points[points.length - 1]);
    points = next.toArray(new Coordinate[0]);
    splits.clear();
  }

  private int compare(Split a, Split b) {
    if (a.edge != b.edge) {
      return Integer.compare(a.edge, b.edge);
    }
    int octant = Octant.octant(points[a.edge], points[a.edge + 1]);
    return SegmentPointComparator.compare(octant, a.at, b.at);
  }

  /** The run in shorter ones of at most so many edges each; what is fresh stays so. */
  void cut(int edges, Consumer<NodedRun> piece) {
    for (int from = 0; from + 1 < points.length; from += edges) {
      int to = Math.min(from + edges, points.length - 1);
      NodedRun part = new NodedRun(Arrays.copyOfRange(points, from, to + 1), chain);
      part.fresh.or(fresh.get(from, to));
      piece.accept(part);
    }
  }

  Envelope box() {
    Envelope box = new Envelope();
    for (Coordinate point : points) {
      box.expandToInclude(point);
    }
    return box;
  }

  /** The bounds of the fresh edges. */
  Envelope freshBox() {
    Envelope box = new Envelope();
    for (int i = fresh.nextSetBit(0); i >= 0; i = fresh.nextSetBit(i + 1)) {
      box.expandToInclude(points[i]);
      box.expandToInclude(points[i + 1]);
    }
    return box;
  }

  @Override
  public Object getData() {
    return chain;
  }

  @Override
  public void setData(Object data) {
    throw new UnsupportedOperationException("a run belongs to its chain");
  }

  @Override
  public int size() {
    return points.length;
  }

  @Override
  public Coordinate getCoordinate(int i) {
    return points[i];
  }

  @Override
  public Coordinate[] getCoordinates() {
    return points;
  }

  @Override
  public boolean isClosed() {
    return points[0].equals2D(points[points.length - 1]);
  }
}
