package slabwright.inlay.stencil;

import slabwright.shape.Vec;

/**
 * The largest disc inside a region that touches its boundary at one point.
 *
 * @param from the point of the boundary
 * @param centre of the disc
 * @param radius in mm
 * @param other the other point that it touches
 */
record InscribedDisc(Vec from, Vec centre, double radius, Vec other) {
  /** Below this, mm, a point counts as lying on a side's own line. */
  private static final double FLAT = 1e-7;

  /** How squarely the two boundary points face each other: -1 is straight across. */
  double facing() {
    return from.minus(centre).unit().dot(other.minus(centre).unit());
  }

  /**
   * The disc that touches at {@code p} with inward direction {@code n} and goes on to touch {@code
   * s}, or null when it never does.
   */
  static InscribedDisc touching(Vec p, Vec n, BoundarySegment s) {
    InscribedDisc best = atPoint(p, n, s.a());
    best = smaller(best, atPoint(p, n, s.b()));
    Vec along = s.b().minus(s.a()).unit();
    Vec normal = along.left();
    double away = p.minus(s.a()).dot(normal);
    Vec towards = away < 0 ? normal.times(-1) : normal;
    double radius = Math.abs(away) / (1 - n.dot(towards));
    Vec centre = p.plus(n.times(radius));
    double t = centre.minus(s.a()).dot(along);
    boolean onSide = Math.abs(away) > FLAT && t > 0 && t < s.a().distanceTo(s.b());
    return onSide
        ? smaller(best, new InscribedDisc(p, centre, radius, s.a().plus(along.times(t))))
        : best;
  }

  private static InscribedDisc atPoint(Vec p, Vec n, Vec q) {
    Vec d = q.minus(p);
    double ahead = d.dot(n);
    if (ahead <= FLAT * d.length() || d.length() == 0) {
      return null;
    }
    double radius = d.dot(d) / (2 * ahead);
    return new InscribedDisc(p, p.plus(n.times(radius)), radius, q);
  }

  static InscribedDisc smaller(InscribedDisc a, InscribedDisc b) {
    if (a == null || b == null) {
      return a == null ? b : a;
    }
    return b.radius < a.radius ? b : a;
  }
}
