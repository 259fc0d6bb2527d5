package slabwright.shape;

import java.util.List;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.algorithm.LineIntersector;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.noding.MCIndexNoder;
import org.locationtech.jts.noding.SegmentIntersector;
import org.locationtech.jts.noding.SegmentString;

/** Looks for an edge that another edge crosses, or whose inside a foreign corner comes near. */
final class NodingCheck implements SegmentIntersector {
  /** A corner nearer to an edge than this may share a grid cell with it (half a diagonal). */
  static final double HALF_STEP = 0.7072;

  private final LineIntersector intersector = new RobustLineIntersector();
  private final double nearness;
  private boolean failed;

  private NodingCheck(double nearness) {
    this.nearness = nearness;
  }

  static boolean holds(List<SegmentString> strings, double nearness) {
    NodingCheck check = new NodingCheck(nearness);
    new MCIndexNoder(check, nearness).computeNodes(strings);
    return !check.failed;
  }

  @Override
  public void processIntersections(SegmentString a, int i, SegmentString b, int j) {
    if (a == b && i == j) {
      return;
    }
    Coordinate p = a.getCoordinate(i);
    Coordinate q = a.getCoordinate(i + 1);
    Coordinate r = b.getCoordinate(j);
    Coordinate s = b.getCoordinate(j + 1);
    intersector.computeIntersection(p, q, r, s);
    failed |=
        (intersector.hasIntersection() && intersector.isInteriorIntersection())
            || (nearness > 0 && (near(p, r, s) || near(q, r, s) || near(r, p, q) || near(s, p, q)));
  }

  private boolean near(Coordinate corner, Coordinate from, Coordinate to) {
    return !corner.equals2D(from)
        && !corner.equals2D(to)
        && Distance.pointToSegment(corner, from, to) < nearness;
  }

  @Override
  public boolean isDone() {
    return failed;
  }
}
