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
   * s}; {@code least} when it never does or the one there is no smaller. Asked for every side near
   * every point, so it is worked out in plain numbers, and what is dear is asked last.
   *
   * @param under discs of this radius and more don't matter, mm
   */
  static InscribedDisc touching(
      Vec p, Vec n, BoundarySegment s, InscribedDisc least, double under) {
    double aheadA = (s.a().x() - p.x()) * n.x() + (s.a().y() - p.y()) * n.y();
    double aheadB = (s.b().x() - p.x()) * n.x() + (s.b().y() - p.y()) * n.y();
    if (aheadA <= 0 && aheadB <= 0) {
      return least;
    }
    InscribedDisc best = atPoint(p, n, s.a(), aheadA, least, under);
    best = atPoint(p, n, s.b(), aheadB, best, under);
    double nx = -s.along().y();
    double ny = s.along().x();
    double away = (p.x() - s.a().x()) * nx + (p.y() - s.a().y()) * ny;
    double facing = away < 0 ? -(n.x() * nx + n.y() * ny) : n.x() * nx + n.y() * ny;
    double radius = Math.abs(away) / (1 - facing);
    if (!(Math.abs(away) > FLAT) || !isSmaller(radius, best, under)) {
      return best;
    }
    Vec centre = p.plus(n.times(radius));
    double t = centre.minus(s.a()).dot(s.along());
    return t > 0 && t < s.length()
        ? new InscribedDisc(p, centre, radius, s.a().plus(s.along().times(t)))
        : best;
  }

  private static InscribedDisc atPoint(
      Vec p, Vec n, Vec q, double ahead, InscribedDisc least, double under) {
    if (ahead <= 0) {
      return least;
    }
    double dx = q.x() - p.x();
    double dy = q.y() - p.y();
    double radius = (dx * dx + dy * dy) / (2 * ahead);
    return isSmaller(radius, least, under) && ahead > FLAT * Math.hypot(dx, dy)
        ? new InscribedDisc(p, p.plus(n.times(radius)), radius, q)
        : least;
  }

  private static boolean isSmaller(double radius, InscribedDisc than, double under) {
    return radius < under && (than == null || radius < than.radius);
  }

  static InscribedDisc smaller(InscribedDisc a, InscribedDisc b) {
    if (a == null || b == null) {
      return a == null ? b : a;
    }
    return b.radius < a.radius ? b : a;
  }
}
