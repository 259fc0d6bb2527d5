package slabwright.shape;

import java.util.ArrayList;
import java.util.List;

/**
 * Circles and arcs as chains of points that lie on the curve; the sag between chord and curve stays
 * within the tolerance (mm).
 */
public final class Arcs {
  private Arcs() {}

  /**
   * The arc over the chord {@code from}–{@code to}.
   *
   * @param rise height over the chord: positive bulges to the right of travel (y up), 0 is
   *     straight; more than half the chord is more than a half circle
   * @return points from {@code from} on, without {@code to}
   */
  public static List<Vec> arc(Vec from, Vec to, double rise, double tolerance) {
    List<Vec> points = new ArrayList<>();
    points.add(from);
    double chord = from.distanceTo(to);
    if (rise == 0 || chord == 0) {
      return points;
    }
    double radius = radius(chord, Math.abs(rise));
    double angle = 4 * Math.atan2(2 * Math.abs(rise), chord);
    Vec right = to.minus(from).unit().left().times(-Math.signum(rise));
    Vec centre = from.towards(to, 0.5).plus(right.times(Math.abs(rise) - radius));
    double turn = Math.signum(rise) * angle;
    int n = segments(radius, angle, tolerance);
    Vec spoke = from.minus(centre);
    for (int i = 1; i < n; i++) {
      points.add(centre.plus(Affine.turn(turn * i / n).apply(spoke)));
    }
    return points;
  }

  /** Radius of the arc of a chord and its rise, c²/8h + h/2. */
  public static double radius(double chord, double rise) {
    return chord * chord / (8 * rise) + rise / 2;
  }

  /** Length of the arc of a chord and its rise. */
  public static double length(double chord, double rise) {
    if (rise == 0) {
      return chord;
    }
    double h = Math.abs(rise);
    return radius(chord, h) * 4 * Math.atan2(2 * h, chord);
  }

  /** Area between a chord and its arc, positive. */
  public static double segmentArea(double chord, double rise) {
    double h = Math.abs(rise);
    if (h == 0) {
      return 0;
    }
    double r = radius(chord, h);
    double angle = 4 * Math.atan2(2 * h, chord);
    return r * r / 2 * (angle - Math.sin(angle));
  }

  public static Ring circle(Vec middle, double radius, double tolerance) {
    int n = Math.max(8, segments(radius, 2 * Math.PI, tolerance));
    List<Vec> points = new ArrayList<>(n);
    for (int i = 0; i < n; i++) {
      points.add(middle.plus(Affine.turn(2 * Math.PI * i / n).apply(new Vec(radius, 0))));
    }
    return new Ring(points);
  }

  /**
   * A rectangle about its middle with rounded corners; a corner radius of half the width makes a
   * strip with half-round ends.
   *
   * @param turn radians counter-clockwise
   */
  public static Ring rounded(
      Vec middle, double length, double width, double corner, double turn, double tolerance) {
    double r = Math.min(corner, Math.min(length, width) / 2);
    Affine place = Affine.turn(turn).then(Affine.move(middle.x(), middle.y()));
    List<Vec> points = new ArrayList<>();
    double[][] signs = {{1, 1}, {-1, 1}, {-1, -1}, {1, -1}};
    for (int q = 0; q < 4; q++) {
      Vec centre = new Vec(signs[q][0] * (length / 2 - r), signs[q][1] * (width / 2 - r));
      int n = r == 0 ? 0 : segments(r, Math.PI / 2, tolerance);
      for (int i = 0; i <= n; i++) {
        double a = Math.PI / 2 * (q + (n == 0 ? 0 : (double) i / n));
        points.add(place.apply(centre.plus(new Vec(r * Math.cos(a), r * Math.sin(a)))));
      }
    }
    return new Ring(points);
  }

  /** Fewest equal chords over the angle whose sag stays within the tolerance. */
  static int segments(double radius, double angle, double tolerance) {
    if (tolerance >= radius) {
      return (int) Math.ceil(angle / (Math.PI / 2));
    }
    return Math.max(1, (int) Math.ceil(angle / (2 * Math.acos(1 - tolerance / radius))));
  }
}
