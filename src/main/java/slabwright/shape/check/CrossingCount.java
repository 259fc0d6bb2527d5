package slabwright.shape.check;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.noding.MCIndexNoder;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.SegmentIntersector;
import org.locationtech.jts.noding.SegmentString;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * Counts where rings cross themselves and one another before they are noded, which takes memory for
 * each crossing. Only true crossings count, not rings that touch or run along each other.
 */
public final class CrossingCount {
  private CrossingCount() {}

  /** Whether there are more crossings than this; stops counting once there are. */
  public static boolean exceeds(List<Ring> rings, long most) {
    List<SegmentString> strings = new ArrayList<>();
    for (Ring ring : rings) {
      if (ring.points().size() > 2) {
        strings.add(new NodedSegmentString(closed(ring), null));
      }
    }
    Counter counter = new Counter(most);
    MCIndexNoder noder = new MCIndexNoder();
    noder.setSegmentIntersector(counter);
    noder.computeNodes(strings);
    return counter.isDone();
  }

  private static Coordinate[] closed(Ring ring) {
    int n = ring.points().size();
    Coordinate[] all = new Coordinate[n + 1];
    for (int i = 0; i <= n; i++) {
      Vec p = ring.points().get(i % n);
      all[i] = new Coordinate(p.x(), p.y());
    }
    return all;
  }

  /** Looks at each pair of segments whose boxes meet. */
  private static final class Counter implements SegmentIntersector {
    private final long most;
    private long seen;

    Counter(long most) {
      this.most = most;
    }

    @Override
    public void processIntersections(SegmentString e, int i, SegmentString f, int j) {
      Coordinate a = e.getCoordinate(i);
      Coordinate b = e.getCoordinate(i + 1);
      Coordinate c = f.getCoordinate(j);
      Coordinate d = f.getCoordinate(j + 1);
      if (side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0) {
        seen++;
      }
    }

    private static double side(Coordinate a, Coordinate b, Coordinate p) {
      return Math.signum((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x));
    }

    @Override
    public boolean isDone() {
      return seen > most;
    }
  }
}
