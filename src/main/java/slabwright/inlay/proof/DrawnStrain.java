package slabwright.inlay.proof;

import slabwright.shape.Affine;
import slabwright.shape.Vec;

/**
 * An affine map as a stretch about a point, in the plan's frame, then a rigid move (polar
 * decomposition).
 *
 * @param xx stretch along x, 1 is none
 * @param yy stretch along y
 * @param xy shear
 * @param rigid from the stretched plan to the drawing; reflects when the map does
 */
record DrawnStrain(double xx, double yy, double xy, Vec about, Affine rigid) {
  static DrawnStrain of(Affine map, Vec about) {
    double m11 = map.a() * map.a() + map.b() * map.b();
    double m12 = map.a() * map.c() + map.b() * map.d();
    double m22 = map.c() * map.c() + map.d() * map.d();
    double root = Math.abs(map.determinant());
    double k = 1 / Math.sqrt(m11 + m22 + 2 * root);
    DrawnStrain s = new DrawnStrain((m11 + root) * k, (m22 + root) * k, m12 * k, about, map);
    return new DrawnStrain(s.xx, s.yy, s.xy, about, s.stretch().inverse().then(map));
  }

  /** The stretch alone. */
  Affine stretch() {
    return Affine.move(-about.x(), -about.y())
        .then(new Affine(xx, xy, xy, yy, 0, 0))
        .then(Affine.move(about.x(), about.y()));
  }

  /** Mean stretch less 1. */
  double size() {
    return (xx + yy) / 2 - 1;
  }

  /** Half the difference between the largest and the smallest stretch. */
  double uneven() {
    return Math.hypot((xx - yy) / 2, xy);
  }

  /** Direction of the largest stretch, radians from x to y, in (-pi/2, pi/2]. */
  double direction() {
    return Math.atan2(2 * xy, xx - yy) / 2;
  }
}
