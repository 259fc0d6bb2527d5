package slabwright.inlay.settingout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/** Finds the surest way to a point. */
final class SettingOutMethodSearch {
  /** A tape may brush a wall this much, mm. */
  private static final double BRUSH = 2;

  private final Region floor;
  private final List<KnownCorner> corners;
  private final SettingOutParameters rules;

  SettingOutMethodSearch(Region floor, List<KnownCorner> corners, SettingOutParameters rules) {
    this.floor = floor;
    this.corners = corners;
    this.rules = rules;
  }

  SettingOutMethod to(Vec p) {
    return ties(p)
        .map(SettingOutMethod.class::cast)
        .or(() -> offset(p))
        .orElseGet(SettingOutMethod.None::new);
  }

  /** Of all pairs of corners in sight that cross well, the one with the least expected error. */
  private Optional<SettingOutMethod.SwingTies> ties(Vec p) {
    List<KnownCorner> seen = corners.stream().filter(c -> isInReach(c.at(), p)).toList();
    List<SettingOutMethod.SwingTies> found = new ArrayList<>();
    for (int i = 0; i < seen.size(); i++) {
      for (int j = i + 1; j < seen.size(); j++) {
        SettingOutMethod.SwingTies ties = ties(p, seen.get(i), seen.get(j));
        if (ties.angle() >= rules.leastAngle() && ties.angle() <= 180 - rules.leastAngle()) {
          found.add(ties);
        }
      }
    }
    return found.stream().min(Comparator.comparingDouble(SettingOutMethod.SwingTies::error));
  }

  private SettingOutMethod.SwingTies ties(Vec p, KnownCorner first, KnownCorner second) {
    Vec a = p.minus(first.at());
    Vec b = p.minus(second.at());
    double angle = Math.abs(Math.atan2(a.cross(b), a.dot(b)));
    double error = error(rules.error(a.length()), rules.error(b.length()), Math.sin(angle));
    return new SettingOutMethod.SwingTies(
        first,
        second,
        a.length(),
        b.length(),
        hand(first.at(), second.at(), p),
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

  private Optional<SettingOutMethod> offset(Vec p) {
    List<SettingOutMethod.Offset> found = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      for (int j = 0; j < corners.size(); j++) {
        if (i != j) {
          offset(p, corners.get(i), corners.get(j)).ifPresent(found::add);
        }
      }
    }
    return found.stream()
        .min(Comparator.comparingDouble(SettingOutMethod.Offset::error))
        .map(SettingOutMethod.class::cast);
  }

  private Optional<SettingOutMethod.Offset> offset(Vec p, KnownCorner first, KnownCorner second) {
    Vec way = second.at().minus(first.at());
    double along = p.minus(first.at()).dot(way.unit());
    Vec foot = first.at().plus(way.unit().times(along));
    boolean between = along >= 0 && along <= way.length();
    if (!between || !isInReach(first.at(), foot) || !isInReach(foot, p)) {
      return Optional.empty();
    }
    double out = foot.distanceTo(p);
    double turned = out * Math.toRadians(rules.squareError());
    double error = Math.max(Math.hypot(rules.error(along), turned), rules.error(out));
    return Optional.of(
        new SettingOutMethod.Offset(
            first, second, along, out, hand(first.at(), second.at(), p), error));
  }

  private boolean isInReach(Vec a, Vec b) {
    double length = a.distanceTo(b);
    if (length > rules.longest()) {
      return false;
    }
    double free = floor.clip(Line.of(a, b)).stream().mapToDouble(Line::length).sum();
    return free >= length - BRUSH;
  }

  private static SettingOutMethod.Hand hand(Vec first, Vec second, Vec p) {
    boolean left = second.minus(first).cross(p.minus(first)) >= 0;
    return left ? SettingOutMethod.Hand.LEFT : SettingOutMethod.Hand.RIGHT;
  }
}
