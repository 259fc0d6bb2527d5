package slabwright.inlay.artwork;

import java.awt.BasicStroke;
import java.awt.Stroke;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import slabwright.inlay.artwork.ArtworkWarning.Kind;
import slabwright.units.Message;

/**
 * Strokes as outlines, in the user space they are defined in. Curves are cut into short pieces
 * first, as the offset of each piece is fitted by one Bézier.
 */
public final class StrokeOutliner {
  private static final int PIECES = 8;
  private static final double MOST_DASHES = 20_000;

  private StrokeOutliner() {}

  public static Path2D outline(Path2D path, Stroke stroke, WarningCollector notes) {
    Stroke used = stroke;
    if (stroke instanceof BasicStroke b && b.getDashArray() != null) {
      used = tamed(b, length(path), notes);
    }
    Path2D.Double outline = new Path2D.Double(used.createStrokedShape(fine(path)));
    outline.setWindingRule(PathIterator.WIND_NON_ZERO);
    return outline;
  }

  private static BasicStroke tamed(BasicStroke s, double length, WarningCollector notes) {
    double cycle = 0;
    for (float dash : s.getDashArray()) {
      cycle += dash;
    }
    if (length < cycle * MOST_DASHES) {
      return s;
    }
    notes.add(Kind.STYLE_LEFT_OUT, Message.of("inlay.stroke-outliner.too-many-dashes"));
    return new BasicStroke(s.getLineWidth(), s.getEndCap(), s.getLineJoin(), s.getMiterLimit());
  }

  private static double length(Path2D path) {
    double sum = 0;
    double[] c = new double[6];
    double x = 0;
    double y = 0;
    for (PathIterator it = path.getPathIterator(null); !it.isDone(); it.next()) {
      int kind = it.currentSegment(c);
      int end = 2 * points(kind) - 2;
      if (kind == PathIterator.SEG_CLOSE) {
        continue;
      }
      if (kind != PathIterator.SEG_MOVETO) {
        for (int i = 0; i <= end; i += 2) {
          sum += Math.hypot(c[i] - (i == 0 ? x : c[i - 2]), c[i + 1] - (i == 0 ? y : c[i - 1]));
        }
      }
      x = c[end];
      y = c[end + 1];
    }
    return sum;
  }

  private static int points(int kind) {
    return switch (kind) {
      case PathIterator.SEG_QUADTO -> 2;
      case PathIterator.SEG_CUBICTO -> 3;
      case PathIterator.SEG_CLOSE -> 0;
      default -> 1;
    };
  }

  /**
   * Curves in short pieces; pieces of no length, which have no direction to join in, are dropped.
   */
  private static Path2D fine(Path2D path) {
    Path2D.Double out = new Path2D.Double(path.getWindingRule());
    double[] in = new double[6];
    boolean fresh = true;
    boolean dot = false;
    for (PathIterator it = path.getPathIterator(null); !it.isDone(); it.next()) {
      int kind = it.currentSegment(in);
      if (kind == PathIterator.SEG_MOVETO || kind == PathIterator.SEG_CLOSE) {
        dot(out, dot);
        startOrClose(kind, in, out);
        fresh = true;
        dot = false;
      } else if (stays(out, in, points(kind))) {
        dot = fresh;
      } else {
        piece(kind, in, out);
        fresh = false;
        dot = false;
      }
    }
    dot(out, dot);
    return out;
  }

  /** A subpath of no length at all still shows its caps. */
  private static void dot(Path2D out, boolean dot) {
    if (dot) {
      out.lineTo(out.getCurrentPoint().getX(), out.getCurrentPoint().getY());
    }
  }

  private static void startOrClose(int kind, double[] in, Path2D out) {
    if (kind == PathIterator.SEG_CLOSE) {
      out.closePath();
    } else {
      out.moveTo(in[0], in[1]);
    }
  }

  private static boolean stays(Path2D out, double[] in, int points) {
    for (int i = 0; i < points; i++) {
      if (in[2 * i] != out.getCurrentPoint().getX()
          || in[2 * i + 1] != out.getCurrentPoint().getY()) {
        return false;
      }
    }
    return true;
  }

  private static void piece(int kind, double[] in, Path2D out) {
    if (kind == PathIterator.SEG_LINETO) {
      out.lineTo(in[0], in[1]);
      return;
    }
    double[] c = new double[8];
    c[0] = out.getCurrentPoint().getX();
    c[1] = out.getCurrentPoint().getY();
    elevate(kind, in, c);
    split(c, PIECES, out);
  }

  /** A quadratic as the cubic that is the same curve. */
  private static void elevate(int kind, double[] in, double[] c) {
    if (kind == PathIterator.SEG_CUBICTO) {
      System.arraycopy(in, 0, c, 2, 6);
      return;
    }
    for (int i = 0; i < 2; i++) {
      c[2 + i] = c[i] + (in[i] - c[i]) * 2 / 3;
      c[4 + i] = in[2 + i] + (in[i] - in[2 + i]) * 2 / 3;
      c[6 + i] = in[2 + i];
    }
  }

  /** Cuts off the first n-th, then goes on with the rest (de Casteljau). */
  private static void split(double[] c, int pieces, Path2D out) {
    double[] rest = c.clone();
    for (int n = pieces; n > 1; n--) {
      double t = 1.0 / n;
      double[] head = new double[8];
      for (int i = 0; i < 2; i++) {
        double ab = mix(rest[i], rest[2 + i], t);
        double bc = mix(rest[2 + i], rest[4 + i], t);
        double cd = mix(rest[4 + i], rest[6 + i], t);
        double abc = mix(ab, bc, t);
        double bcd = mix(bc, cd, t);
        double on = mix(abc, bcd, t);
        head[2 + i] = ab;
        head[4 + i] = abc;
        head[6 + i] = on;
        rest[i] = on;
        rest[2 + i] = bcd;
        rest[4 + i] = cd;
      }
      out.curveTo(head[2], head[3], head[4], head[5], head[6], head[7]);
    }
    out.curveTo(rest[2], rest[3], rest[4], rest[5], rest[6], rest[7]);
  }

  private static double mix(double a, double b, double t) {
    return a + (b - a) * t;
  }
}
