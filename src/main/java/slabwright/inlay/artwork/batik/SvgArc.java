package slabwright.inlay.artwork.batik;

import java.awt.geom.Arc2D;
import java.awt.geom.Point2D;

/**
 * From an arc's end points to its middle: SVG 2, appendix B.2.4 and B.2.5. The SVG library enlarges
 * the radii of every half circle by a hundred-thousandth, which moves its middle by 0.45 % of the
 * radius; here a half circle is one.
 */
final class SvgArc {
  /** Coordinates are read in single precision; closer than this to a half circle is one. */
  private static final double HALF = 4e-7;

  private SvgArc() {}

  /**
   * The arc before its turn of {@code degrees} about its middle.
   *
   * @param large the arc of more than 180 degrees
   * @param sweep towards growing angles, x to y
   */
  static Arc2D of(
      Point2D from,
      double givenRx,
      double givenRy,
      double degrees,
      boolean large,
      boolean sweep,
      Point2D to) {
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    double dx = (from.getX() - to.getX()) / 2;
    double dy = (from.getY() - to.getY()) / 2;
    double x = cos * dx + sin * dy;
    double y = -sin * dx + cos * dy;
    double rx = Math.abs(givenRx);
    double ry = Math.abs(givenRy);
    double lambda = x * x / (rx * rx) + y * y / (ry * ry);
    double grow = lambda > 1 - HALF ? Math.sqrt(lambda) : 1;
    rx *= grow;
    ry *= grow;
    double off = lambda > 1 - HALF ? 0 : Math.sqrt((1 - lambda) / lambda);
    double side = large == sweep ? -off : off;
    double cx = side * rx * y / ry;
    double cy = -side * ry * x / rx;
    double start = Math.atan2((y - cy) / ry, (x - cx) / rx);
    double end = Math.atan2((-y - cy) / ry, (-x - cx) / rx);
    double extent = Math.toDegrees(end - start);
    if (sweep && extent < 0) {
      extent += 360;
    } else if (!sweep && extent > 0) {
      extent -= 360;
    }
    double middleX = cos * cx - sin * cy + (from.getX() + to.getX()) / 2;
    double middleY = sin * cx + cos * cy + (from.getY() + to.getY()) / 2;
    // Arc2D counts angles the other way round
    return new Arc2D.Double(
        middleX - rx, middleY - ry, 2 * rx, 2 * ry, -Math.toDegrees(start), -extent, Arc2D.OPEN);
  }
}
