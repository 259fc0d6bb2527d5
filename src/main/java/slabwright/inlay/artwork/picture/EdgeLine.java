package slabwright.inlay.artwork.picture;

import slabwright.shape.Vec;

/**
 * The straight line nearest to some points, by the squares of their distances to it.
 *
 * @param middle a point of it
 * @param along its direction, of length 1, in the points' order
 * @param off root mean square distance of the points
 */
record EdgeLine(Vec middle, Vec along, double off) {
  static EdgeLine of(double[] x, double[] y, int from, int to) {
    int n = to - from;
    double mx = 0;
    double my = 0;
    for (int i = from; i < to; i++) {
      mx += x[i] / n;
      my += y[i] / n;
    }
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (int i = from; i < to; i++) {
      double dx = x[i] - mx;
      double dy = y[i] - my;
      xx += dx * dx;
      xy += dx * dy;
      yy += dy * dy;
    }
    double angle = Math.atan2(2 * xy, xx - yy) / 2;
    Vec along = new Vec(Math.cos(angle), Math.sin(angle));
    double least =
        xx
            + yy
            - (xx * along.x() * along.x()
                + 2 * xy * along.x() * along.y()
                + yy * along.y() * along.y());
    Vec way = new Vec(x[to - 1] - x[from], y[to - 1] - y[from]);
    Vec forward = way.dot(along) < 0 ? along.times(-1) : along;
    return new EdgeLine(new Vec(mx, my), forward, Math.sqrt(Math.max(0, least) / n));
  }

  /** How far a point lies to the side of it. */
  double side(double x, double y) {
    return along.cross(new Vec(x, y).minus(middle));
  }

  /** The point of it that is nearest to another. */
  Vec nearest(Vec p) {
    return middle.plus(along.times(along.dot(p.minus(middle))));
  }

  /** Sine of half the angle between it and another, both directed to where they meet. */
  double sineOfHalf(EdgeLine o) {
    return Math.sqrt(Math.max(0, (1 - along.dot(o.along)) / 2));
  }

  /** Where it meets another; not finite when they are parallel. */
  Vec meets(EdgeLine o) {
    double t = o.middle.minus(middle).cross(o.along) / along.cross(o.along);
    return middle.plus(along.times(t));
  }
}
