package slabwright.tape;

/** What can be seen from corner to corner of a room; curved walls count as their chords. */
final class LineOfSight {
  private final double[] xy;
  private final int corners;

  LineOfSight(double[] xy) {
    this.xy = xy.clone();
    corners = xy.length / 2;
  }

  /** Whether a tape can run from one corner to the other inside the room. */
  boolean isClear(int a, int b) {
    for (int wall = 0; wall < corners; wall++) {
      int next = (wall + 1) % corners;
      boolean apart = wall != a && wall != b && next != a && next != b;
      if (apart && crosses(a, b, wall, next)) {
        return false;
      }
    }
    return inside((x(a) + x(b)) / 2, (y(a) + y(b)) / 2);
  }

  /** Whether the segments between two pairs of corners cross in a point inside both. */
  boolean crosses(int a, int b, int c, int d) {
    return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
  }

  private double side(int a, int b, int p) {
    return Math.signum((x(b) - x(a)) * (y(p) - y(a)) - (y(b) - y(a)) * (x(p) - x(a)));
  }

  private boolean inside(double px, double py) {
    boolean inside = false;
    for (int i = 0; i < corners; i++) {
      int j = (i + 1) % corners;
      if (y(i) > py != y(j) > py) {
        double at = x(i) + (py - y(i)) / (y(j) - y(i)) * (x(j) - x(i));
        inside ^= px < at;
      }
    }
    return inside;
  }

  private double x(int corner) {
    return xy[2 * corner];
  }

  private double y(int corner) {
    return xy[2 * corner + 1];
  }
}
