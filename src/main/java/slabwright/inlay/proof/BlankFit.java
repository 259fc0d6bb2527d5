package slabwright.inlay.proof;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * The drawn edge of a sheet, seen in a frame in which the drawn openings lie on the planned ones
 * and lengths are those of the drawing.
 *
 * @param width of the drawn rectangle, mm; 0 when no rectangle was found
 * @param height of it
 * @param turn of the sheet against its openings, radians from x to y
 * @param shift of the sheet against its openings, mm
 * @param middle of the drawn rectangle
 */
record BlankFit(double width, double height, double turn, Vec shift, Vec middle) {
  private static final double SIZE_LIKE = 0.12;
  private static final double PLACE_LIKE = 0.15;
  private static final double FULL = 0.985;
  private static final double SQUARE = Math.sin(Math.toRadians(3));

  /** Four corners in order. */
  private record Quad(Vec a, Vec b, Vec c, Vec d) {
    Vec middle() {
      return a.plus(b).plus(c).plus(d).times(0.25);
    }

    /** The mean of two opposite sides as one vector. */
    Vec first() {
      return b.minus(a).plus(c.minus(d)).times(0.5);
    }

    Vec second() {
      return c.minus(b).plus(d.minus(a)).times(0.5);
    }

    double area() {
      return Math.abs(c.minus(a).cross(d.minus(b))) / 2;
    }
  }

  private record Rectangle(Vec middle, double width, double height, double turn) {}

  boolean found() {
    return width > 0;
  }

  /** From the planned sheet to where the drawn one lies. */
  Affine map(Bounds sheet) {
    Vec m = sheet.middle();
    return Affine.move(-m.x(), -m.y())
        .then(Affine.turn(turn))
        .then(Affine.move(m.x() + shift.x(), m.y() + shift.y()));
  }

  /** From the planned sheet onto the drawn one, its size included. */
  Affine whole(Bounds sheet) {
    Vec m = sheet.middle();
    return Affine.move(-m.x(), -m.y())
        .then(Affine.scale(width / sheet.width(), height / sheet.height()))
        .then(Affine.turn(turn))
        .then(Affine.move(middle.x(), middle.y()));
  }

  /** Looks for the rectangle that is most like the planned one. */
  static BlankFit of(List<Ring> drawn, Bounds sheet) {
    return drawn.stream()
        .map(ring -> rectangle(ring, sheet))
        .flatMap(Optional::stream)
        .filter(r -> off(r, sheet) < SIZE_LIKE + PLACE_LIKE)
        .min(Comparator.comparingDouble(r -> off(r, sheet)))
        .map(r -> placed(r, sheet))
        .orElse(new BlankFit(0, 0, 0, Vec.ZERO, Vec.ZERO));
  }

  private static double off(Rectangle r, Bounds sheet) {
    double size = Math.max(sheet.width(), sheet.height());
    double wrong =
        Math.max(Math.abs(r.width - sheet.width()), Math.abs(r.height - sheet.height())) / size;
    double away = r.middle.distanceTo(sheet.middle()) / size;
    return wrong > SIZE_LIKE || away > PLACE_LIKE ? 1 : wrong + away;
  }

  private static Optional<Rectangle> rectangle(Ring ring, Bounds sheet) {
    Bounds box = ring.bounds();
    double size = Math.max(sheet.width(), sheet.height());
    if (Math.max(box.width(), box.height()) < 0.5 * size) {
      return Optional.empty();
    }
    Quad q = corners(ring.points());
    Vec first = q.first();
    Vec second = q.second();
    boolean full = Math.abs(ring.signedArea()) > FULL * q.area();
    boolean like = q.area() > FULL * Math.abs(ring.signedArea());
    boolean square = Math.abs(first.unit().dot(second.unit())) < SQUARE;
    return full && like && square
        ? Optional.of(upright(q.middle(), first, second))
        : Optional.empty();
  }

  private static Rectangle upright(Vec middle, Vec first, Vec second) {
    boolean flat = Math.abs(first.x()) >= Math.abs(first.y());
    Vec across = flat ? first : second;
    Vec along = flat ? second : first;
    Vec right = across.x() < 0 ? across.times(-1) : across;
    return new Rectangle(middle, across.length(), along.length(), right.angle());
  }

  /** The four points that reach farthest: two opposite ones first, then to both sides of them. */
  private static Quad corners(List<Vec> points) {
    Vec a = farthest(points, points.get(0));
    Vec c = farthest(points, a);
    Vec across = c.minus(a).left();
    Vec b = points.get(0);
    Vec d = points.get(0);
    for (Vec p : points) {
      b = p.dot(across) < b.dot(across) ? p : b;
      d = p.dot(across) > d.dot(across) ? p : d;
    }
    return new Quad(a, b, c, d);
  }

  private static Vec farthest(List<Vec> points, Vec from) {
    return points.stream().max(Comparator.comparingDouble(from::distanceTo)).orElseThrow();
  }

  /** What moves both opposite sides alike is a shift; the rest is a wrong edge. */
  private static BlankFit placed(Rectangle r, Bounds sheet) {
    Vec off = r.middle.minus(sheet.middle());
    Vec own = Affine.turn(-r.turn).apply(off);
    Vec shift =
        new Vec(
            common(own.x(), (r.width - sheet.width()) / 2),
            common(own.y(), (r.height - sheet.height()) / 2));
    return new BlankFit(r.width, r.height, r.turn, Affine.turn(r.turn).apply(shift), r.middle);
  }

  /** The move that both sides share, when their middle moved and each of them grew. */
  private static double common(double moved, double grown) {
    double one = moved + grown;
    double other = moved - grown;
    return one * other <= 0 ? 0 : Math.signum(one) * Math.min(Math.abs(one), Math.abs(other));
  }
}
