package slabwright.inlay.artwork.batik;

import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.geom.RoundRectangle2D;
import org.apache.batik.ext.awt.geom.ExtendedPathIterator;
import org.apache.batik.ext.awt.geom.ExtendedShape;

/**
 * Outlines with true arcs. The usual four Béziers of a circle stray 0.03 % of the radius from it,
 * which is 0.3 mm on a ring 2.4 m wide; here an arc takes one Bézier for every 22.5 degrees, which
 * strays by less than a ten-millionth.
 */
final class FineOutline {
  private static final double STEP = 22.5;

  private FineOutline() {}

  public static Path2D.Double of(Shape shape) {
    if (shape instanceof Ellipse2D e) {
      return ellipse(e);
    }
    if (shape instanceof RoundRectangle2D r) {
      return roundRectangle(r);
    }
    if (shape instanceof ExtendedShape e) {
      return extended(e.getExtendedPathIterator());
    }
    return new Path2D.Double(shape);
  }

  private static Path2D.Double ellipse(Ellipse2D e) {
    Path2D.Double path = new Path2D.Double();
    path.moveTo(e.getMaxX(), e.getCenterY());
    arc(
        path,
        new Arc2D.Double(e.getX(), e.getY(), e.getWidth(), e.getHeight(), 0, -360, Arc2D.OPEN),
        0,
        new Point2D.Double(e.getMaxX(), e.getCenterY()));
    path.closePath();
    return path;
  }

  private static Path2D.Double roundRectangle(RoundRectangle2D r) {
    double aw = Math.min(r.getArcWidth(), r.getWidth());
    double ah = Math.min(r.getArcHeight(), r.getHeight());
    double x0 = r.getMinX();
    double x1 = r.getMaxX();
    double y0 = r.getMinY();
    double y1 = r.getMaxY();
    Path2D.Double path = new Path2D.Double();
    path.moveTo(x0 + aw / 2, y0);
    path.lineTo(x1 - aw / 2, y0);
    corner(path, x1 - aw, y0, aw, ah, 90, x1, y0 + ah / 2);
    path.lineTo(x1, y1 - ah / 2);
    corner(path, x1 - aw, y1 - ah, aw, ah, 0, x1 - aw / 2, y1);
    path.lineTo(x0 + aw / 2, y1);
    corner(path, x0, y1 - ah, aw, ah, -90, x0, y1 - ah / 2);
    path.lineTo(x0, y0 + ah / 2);
    corner(path, x0, y0, aw, ah, 180, x0 + aw / 2, y0);
    path.closePath();
    return path;
  }

  private static void corner(
      Path2D path, double x, double y, double w, double h, double from, double endX, double endY) {
    if (w > 0 && h > 0) {
      arc(
          path,
          new Arc2D.Double(x, y, w, h, from, -90, Arc2D.OPEN),
          0,
          new Point2D.Double(endX, endY));
    }
  }

  private static Path2D.Double extended(ExtendedPathIterator it) {
    Path2D.Double path =
        new Path2D.Double(
            it.getWindingRule() == ExtendedPathIterator.WIND_EVEN_ODD
                ? PathIterator.WIND_EVEN_ODD
                : PathIterator.WIND_NON_ZERO);
    double[] c = new double[7];
    for (; !it.isDone(); it.next()) {
      int kind = it.currentSegment(c);
      switch (kind) {
        case ExtendedPathIterator.SEG_MOVETO -> path.moveTo(c[0], c[1]);
        case ExtendedPathIterator.SEG_LINETO -> path.lineTo(c[0], c[1]);
        case ExtendedPathIterator.SEG_QUADTO -> path.quadTo(c[0], c[1], c[2], c[3]);
        case ExtendedPathIterator.SEG_CUBICTO -> path.curveTo(c[0], c[1], c[2], c[3], c[4], c[5]);
        case ExtendedPathIterator.SEG_ARCTO -> svgArc(path, c);
        default -> path.closePath();
      }
    }
    return path;
  }

  /** An arc as SVG gives it: radii, turn of the x axis in degrees, two flags, end point. */
  private static void svgArc(Path2D path, double[] c) {
    Point2D from = path.getCurrentPoint();
    Point2D to = new Point2D.Double(c[5], c[6]);
    if (from == null || from.equals(to)) {
      return;
    }
    if (c[0] == 0 || c[1] == 0) {
      path.lineTo(c[5], c[6]);
      return;
    }
    Arc2D arc = SvgArc.of(from, c[0], c[1], c[2], c[3] != 0, c[4] != 0, to);
    arc(path, arc, Math.toRadians(c[2]), to);
  }

  /** Appends the arc, turned about its middle, as fine Béziers that end exactly at {@code end}. */
  private static void arc(Path2D path, Arc2D arc, double turn, Point2D end) {
    int n = Math.max(1, (int) Math.ceil(Math.abs(arc.getAngleExtent()) / STEP - 1e-9));
    double step = Math.toRadians(arc.getAngleExtent()) / n;
    double start = Math.toRadians(arc.getAngleStart());
    double k = 4.0 / 3 * Math.tan(step / 4);
    for (int i = 0; i < n; i++) {
      double a = start + i * step;
      double b = a + step;
      Point2D c1 = onArc(arc, turn, Math.cos(a) - k * Math.sin(a), Math.sin(a) + k * Math.cos(a));
      Point2D c2 = onArc(arc, turn, Math.cos(b) + k * Math.sin(b), Math.sin(b) - k * Math.cos(b));
      Point2D p = i == n - 1 ? end : onArc(arc, turn, Math.cos(b), Math.sin(b));
      path.curveTo(c1.getX(), c1.getY(), c2.getX(), c2.getY(), p.getX(), p.getY());
    }
  }

  /** A point of the unit circle's frame (y up) carried to the ellipse (y down) and turned. */
  private static Point2D onArc(Arc2D arc, double turn, double u, double v) {
    double x = u * arc.getWidth() / 2;
    double y = -v * arc.getHeight() / 2;
    return new Point2D.Double(
        arc.getCenterX() + x * Math.cos(turn) - y * Math.sin(turn),
        arc.getCenterY() + x * Math.sin(turn) + y * Math.cos(turn));
  }
}
