package slabwright.drawing.paint;

import java.io.IOException;
import java.util.List;
import slabwright.shape.Vec;

/**
 * A chain of points led past those that no printer could show: what is left out lies within {@link
 * #OFF} mm of paper of the line that is drawn. First and last points stay.
 *
 * <p>A graphic is kept to 0.001 mm of the floor, so on a plan at 1 : 100 its points lie some
 * hundredths of a millimetre apart, and a page of it would be 16,000 lines to write and to pack.
 */
final class PaperChain {
  /** Millimetres of paper; a dot of a printer of 2,400 dpi is five times as wide. */
  static final double OFF = 0.002;

  /** What takes the points that stay, in order; the first of them begins the chain. */
  interface Sink {
    void point(Vec p, boolean begins) throws IOException;
  }

  private final Sink sink;
  private Vec from;
  private Vec last;
  private double farthest;
  private boolean open;
  // The directions from the last kept point that pass all left out within OFF: from right to left.
  private double rightX;
  private double rightY;
  private double leftX;
  private double leftY;

  private PaperChain(Sink sink, Vec first) {
    this.sink = sink;
    start(first);
  }

  /** Hands the points that stay to the sink; none for no points. */
  static void lead(List<Vec> points, Sink sink) throws IOException {
    if (points.isEmpty()) {
      return;
    }
    sink.point(points.get(0), true);
    PaperChain chain = new PaperChain(sink, points.get(0));
    for (int i = 1; i < points.size(); i++) {
      chain.next(points.get(i));
    }
    if (points.size() > 1) {
      sink.point(chain.last, false);
    }
  }

  private void start(Vec p) {
    from = p;
    last = p;
    farthest = 0;
    open = true;
  }

  private void next(Vec p) throws IOException {
    if (!taken(p)) {
      sink.point(last, false);
      start(last);
      taken(p);
    }
    last = p;
  }

  /** Whether a line from the last kept point to this one passes all between; narrows the way. */
  private boolean taken(Vec p) {
    double x = p.x() - from.x();
    double y = p.y() - from.y();
    double d = Math.sqrt(x * x + y * y);
    if (d < farthest || d <= OFF) {
      return d <= OFF && farthest <= OFF;
    }
    if (!open && (rightX * y - rightY * x < 0 || x * leftY - y * leftX < 0)) {
      return false;
    }
    farthest = d;
    double sin = OFF / d;
    double cos = Math.sqrt(1 - sin * sin);
    narrow((x * cos + y * sin) / d, (y * cos - x * sin) / d, false);
    narrow((x * cos - y * sin) / d, (y * cos + x * sin) / d, true);
    open = false;
    return true;
  }

  private void narrow(double x, double y, boolean left) {
    if (left && (open || x * leftY - y * leftX > 0)) {
      leftX = x;
      leftY = y;
    } else if (!left && (open || rightX * y - rightY * x > 0)) {
      rightX = x;
      rightY = y;
    }
  }
}
