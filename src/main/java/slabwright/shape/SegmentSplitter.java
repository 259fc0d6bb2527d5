package slabwright.shape;

import java.util.function.BooleanSupplier;
import org.locationtech.jts.algorithm.LineIntersector;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.noding.SegmentIntersector;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snapround.HotPixel;

/**
 * Splits edges where another crosses or touches them, rounded to whole grid steps, and if asked at
 * each foreign corner whose grid cell they pass through.
 */
final class SegmentSplitter implements SegmentIntersector {
  /** A corner farther than this from an edge cannot share its cell with it (half a diagonal). */
  private static final double HALF_DIAGONAL = 0.7072;

  private final LineIntersector intersector = new RobustLineIntersector();

  private final boolean joins;
  private final double atEnd;
  private final BooleanSupplier cancelled;
  private boolean found;

  /**
   * Splits what is noded.
   *
   * @param atEnd nearer to an end of an edge than this, a crossing is moved to it; grid steps
   */
  SegmentSplitter(boolean joins, double atEnd, BooleanSupplier cancelled) {
    this.joins = joins;
    this.atEnd = atEnd;
    this.cancelled = cancelled;
    intersector.setPrecisionModel(Noding.STEPS);
  }

  /** How near edges must come for this to look at them. */
  double nearness() {
    return joins ? HALF_DIAGONAL : 0;
  }

  /** Whether there was nothing to split. */
  boolean foundNothing() {
    return !found;
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
    if (intersector.hasIntersection() && intersector.isInteriorIntersection()) {
      for (int k = 0; k < intersector.getIntersectionNum(); k++) {
        Coordinate at = place(intersector.getIntersection(k), p, q, r, s);
        split(a, i, at);
        split(b, j, at);
      }
    }
    if (joins) {
      join(a, i, r);
      join(a, i, s);
      join(b, j, p);
      join(b, j, q);
    }
  }

  private Coordinate place(Coordinate crossing, Coordinate... ends) {
    Coordinate nearest = crossing;
    double least = atEnd;
    for (Coordinate end : ends) {
      double distance = end.distance(crossing);
      if (distance < least) {
        nearest = end;
        least = distance;
      }
    }
    return nearest;
  }

  private void join(SegmentString string, int i, Coordinate corner) {
    Coordinate from = string.getCoordinate(i);
    Coordinate to = string.getCoordinate(i + 1);
    if (isNear(corner, from, to) && new HotPixel(corner, 1).intersects(from, to)) {
      split(string, i, corner);
    }
  }

  /** Nearly all corners are far or the edge's own; this sorts them out cheaply. */
  private static boolean isNear(Coordinate corner, Coordinate from, Coordinate to) {
    double dx = to.x - from.x;
    double dy = to.y - from.y;
    double x = corner.x - from.x;
    double y = corner.y - from.y;
    double off = dx * y - dy * x;
    double along = dx * x + dy * y;
    double square = dx * dx + dy * dy;
    return along > 0 && along < square && off * off <= HALF_DIAGONAL * HALF_DIAGONAL * square;
  }

  private void split(SegmentString string, int i, Coordinate at) {
    if (!at.equals2D(string.getCoordinate(i)) && !at.equals2D(string.getCoordinate(i + 1))) {
      ((NodedRun) string).mark(i, at.copy());
      found = true;
    }
  }

  @Override
  public boolean isDone() {
    return cancelled.getAsBoolean();
  }
}
