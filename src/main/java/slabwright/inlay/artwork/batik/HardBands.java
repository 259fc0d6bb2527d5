package slabwright.inlay.artwork.batik;

import java.awt.Color;
import java.awt.Paint;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.apache.batik.ext.awt.LinearGradientPaint;
import org.apache.batik.ext.awt.MultipleGradientPaint;
import org.apache.batik.ext.awt.RadialGradientPaint;

/**
 * A gradient that changes in steps alone: bands of plain colours with hard edges. Others, repeated
 * ones, and radial ones seen from aside have none.
 */
final class HardBands {
  private static final double STEP = 1e-4;
  private static final double FAR = 1e6;

  /**
   * One colour of a gradient.
   *
   * @param where it shows, in the user space of what is painted
   */
  record Band(Color colour, Path2D where) {}

  /** A stretch of one colour along the gradient. */
  private record Stretch(Color colour, double from, double to) {}

  private final MultipleGradientPaint paint;
  private final Rectangle2D box;

  private HardBands(MultipleGradientPaint paint, Rectangle2D box) {
    this.paint = paint;
    this.box = box;
  }

  /**
   * The bands; none when the paint changes softly anywhere or is no gradient.
   *
   * @param box around what is painted, in its user space
   */
  static List<Band> of(Paint paint, Rectangle2D box) {
    boolean once =
        paint instanceof MultipleGradientPaint g
            && g.getCycleMethod() == MultipleGradientPaint.NO_CYCLE;
    return once ? new HardBands((MultipleGradientPaint) paint, box).bands() : List.of();
  }

  private List<Band> bands() {
    List<Band> bands = new ArrayList<>();
    try {
      AffineTransform back = paint.getTransform().createInverse();
      Rectangle2D reach = new Path2D.Double(box, back).getBounds2D();
      for (Stretch s : stretches()) {
        Path2D where = where(s, reach);
        if (where.getCurrentPoint() != null) {
          bands.add(new Band(s.colour, new Path2D.Double(where, paint.getTransform())));
        }
      }
    } catch (NoninvertibleTransformException flat) {
      return List.of();
    }
    return bands;
  }

  private List<Stretch> stretches() {
    float[] at = paint.getFractions();
    Color[] colours = paint.getColors();
    List<Stretch> found = new ArrayList<>();
    double from = -FAR;
    for (int i = 0; i + 1 < at.length; i++) {
      boolean same = colours[i].equals(colours[i + 1]);
      if (!same && at[i + 1] - at[i] > STEP) {
        return List.of();
      }
      if (!same) {
        found.add(new Stretch(colours[i], from, at[i]));
        from = at[i];
      }
    }
    found.add(new Stretch(colours[at.length - 1], from, FAR));
    found.removeIf(s -> s.to - s.from <= STEP);
    return found;
  }

  /** Where a stretch shows, in the gradient's own space; nothing when that can't be told. */
  private Path2D where(Stretch s, Rectangle2D reach) {
    if (paint instanceof LinearGradientPaint linear) {
      return strip(s, linear.getStartPoint(), linear.getEndPoint(), reach);
    }
    return paint instanceof RadialGradientPaint radial
        ? ring(s, radial, reach)
        : new Path2D.Double();
  }

  private static Path2D strip(Stretch s, Point2D start, Point2D end, Rectangle2D reach) {
    double dx = end.getX() - start.getX();
    double dy = end.getY() - start.getY();
    double length = dx * dx + dy * dy;
    Path2D.Double strip = new Path2D.Double();
    if (!(length > 0)) {
      return strip;
    }
    double most = 0;
    for (int i = 0; i < 4; i++) {
      double x = (i % 2 == 0 ? reach.getMinX() : reach.getMaxX()) - start.getX();
      double y = (i < 2 ? reach.getMinY() : reach.getMaxY()) - start.getY();
      most = Math.max(most, Math.hypot(x, y) / Math.sqrt(length));
    }
    double wide = most + 1;
    double from = Math.max(s.from, -wide);
    double to = Math.min(s.to, wide);
    if (from >= to) {
      return strip;
    }
    double[][] corners = {{from, -wide}, {to, -wide}, {to, wide}, {from, wide}};
    for (double[] c : corners) {
      double x = start.getX() + c[0] * dx - c[1] * dy;
      double y = start.getY() + c[0] * dy + c[1] * dx;
      if (strip.getCurrentPoint() == null) {
        strip.moveTo(x, y);
      } else {
        strip.lineTo(x, y);
      }
    }
    strip.closePath();
    return strip;
  }

  private static Path2D ring(Stretch s, RadialGradientPaint radial, Rectangle2D reach) {
    Point2D middle = radial.getCenterPoint();
    Path2D.Double ring = new Path2D.Double(Path2D.WIND_EVEN_ODD);
    if (middle.distance(radial.getFocusPoint()) > STEP * radial.getRadius()) {
      return ring;
    }
    double far = Math.hypot(reach.getWidth(), reach.getHeight());
    far += middle.distance(reach.getCenterX(), reach.getCenterY()) + radial.getRadius();
    circle(ring, middle, Math.min(s.to * radial.getRadius(), far));
    if (s.from > 0) {
      circle(ring, middle, Math.min(s.from * radial.getRadius(), far));
    }
    return ring;
  }

  private static void circle(Path2D to, Point2D middle, double r) {
    if (r > 0) {
      Ellipse2D round = new Ellipse2D.Double(middle.getX() - r, middle.getY() - r, 2 * r, 2 * r);
      to.append(FineOutline.of(round), false);
    }
  }
}
