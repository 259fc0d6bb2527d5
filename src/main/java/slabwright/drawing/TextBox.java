package slabwright.drawing;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Bounds;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * The box that words cover on paper, turned as they are, from the foot of g to the top of capitals.
 */
public record TextBox(String words, Ring corners) {
  /** The boxes of all words in a drawing that lies on paper; empty words have none. */
  public static List<TextBox> of(Drawing drawing) {
    List<TextBox> boxes = new ArrayList<>();
    for (PrimitiveInk part : drawing.plain()) {
      if (part instanceof Text t && !t.words().isBlank()) {
        boxes.add(of(t));
      }
    }
    return boxes;
  }

  /** The box of one run of words on paper. */
  public static TextBox of(Text t) {
    double size = t.style().size();
    double width = TextMeasure.width(t.words(), t.style());
    double left = -width * t.anchor().shareBefore();
    double up = TextMeasure.CAP_HEIGHT * size;
    double down = -TextMeasure.DESCENT * size;
    double a = Math.toRadians(t.turn());
    Vec along = new Vec(Math.cos(a), -Math.sin(a));
    Vec rise = new Vec(-Math.sin(a), -Math.cos(a));
    List<Vec> corners = new ArrayList<>();
    for (double[] c :
        new double[][] {{left, down}, {left + width, down}, {left + width, up}, {left, up}}) {
      corners.add(t.at().plus(along.times(c[0])).plus(rise.times(c[1])));
    }
    return new TextBox(t.words(), new Ring(corners));
  }

  public Bounds bounds() {
    return corners.bounds();
  }

  /** Whether the two boxes share more than a touch. */
  public boolean overlaps(TextBox other) {
    return !apart(corners.points(), other.corners.points())
        && !apart(other.corners.points(), corners.points());
  }

  /** Whether the line of one of the first box's sides keeps the two apart. */
  private static boolean apart(List<Vec> box, List<Vec> other) {
    for (int i = 0; i < box.size(); i++) {
      Vec side = box.get((i + 1) % box.size()).minus(box.get(i)).unit();
      Vec out = new Vec(-side.y(), side.x());
      double[] a = span(box, out);
      double[] b = span(other, out);
      if (a[1] <= b[0] + 0.01 || b[1] <= a[0] + 0.01) {
        return true;
      }
    }
    return false;
  }

  private static double[] span(List<Vec> points, Vec out) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Vec p : points) {
      low = Math.min(low, p.dot(out));
      high = Math.max(high, p.dot(out));
    }
    return new double[] {low, high};
  }
}
