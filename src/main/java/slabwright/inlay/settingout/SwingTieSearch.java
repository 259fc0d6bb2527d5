package slabwright.inlay.settingout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/** Finds the surest two tapes to a point. */
final class SwingTieSearch {
  private final SightLine sight;
  private final List<KnownCorner> corners;
  private final SettingOutParameters rules;

  SwingTieSearch(Region free, List<KnownCorner> corners, SettingOutParameters rules) {
    this.sight = new SightLine(free, rules.longest());
    this.corners = corners;
    this.rules = rules;
  }

  /** Of all pairs of corners in sight that cross well, the one with the least expected error. */
  Optional<SwingTies> to(Vec p) {
    List<KnownCorner> seen = corners.stream().filter(c -> sight.reaches(c.at(), p)).toList();
    List<SwingTies> found = new ArrayList<>();
    for (int i = 0; i < seen.size(); i++) {
      for (int j = i + 1; j < seen.size(); j++) {
        SwingTies ties = ties(p, seen.get(i), seen.get(j));
        if (ties.angle() >= rules.leastAngle() && ties.angle() <= 180 - rules.leastAngle()) {
          found.add(ties);
        }
      }
    }
    return found.stream().min(Comparator.comparingDouble(SwingTies::error));
  }

  private SwingTies ties(Vec p, KnownCorner first, KnownCorner second) {
    Vec a = p.minus(first.at());
    Vec b = p.minus(second.at());
    double angle = Math.abs(Math.atan2(a.cross(b), a.dot(b)));
    double error = error(rules.error(a.length()), rules.error(b.length()), Math.sin(angle));
    boolean left = second.at().minus(first.at()).cross(a) >= 0;
    return new SwingTies(
        first,
        second,
        a.length(),
        b.length(),
        left ? Hand.LEFT : Hand.RIGHT,
        Math.toDegrees(angle),
        error);
  }

  /**
   * Longer half axis of the error ellipse of two distances that cross at an angle: the covariance
   * has trace (s² + t²) / sin² and determinant s² t² / sin².
   */
  static double error(double s, double t, double sine) {
    double trace = (s * s + t * t) / (sine * sine);
    double det = s * s * t * t / (sine * sine);
    return Math.sqrt((trace + Math.sqrt(Math.max(0, trace * trace - 4 * det))) / 2);
  }
}
