package slabwright.picture;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.shape.fit.Homography;

/**
 * A pinhole camera held level at eye height, its lens shifted down, so that uprights stay upright.
 * A point of the floor at {@code right} and {@code ahead} of the eye is seen at {@code x = middle +
 * focal · right / ahead}, {@code y = horizon + focal · eye height / ahead}.
 *
 * @param eye where it stands, site mm
 * @param ahead unit vector of where it looks, site frame
 * @param height of the eye above the floor, mm
 * @param focal length in pixels
 * @param middle x of the line of sight, pixels
 * @param horizon y of the horizon, pixels
 */
record DoorCamera(Vec eye, Vec ahead, double height, double focal, double middle, double horizon) {
  /** Eye of a person standing, mm; a common figure. */
  static final double EYE = 1600;

  /** How far outside the way in the eye is, so that what lies behind the door is seen, mm. */
  private static final double BACK = 1800;

  private static final double HALF_ANGLE = Math.toRadians(36);
  private static final double HORIZON = 0.30;

  /** The most that one turns towards the middle of the room from straight ahead. */
  private static final double TURN = Math.toRadians(18);

  /** Nothing nearer than this is shown, mm. */
  static final double NEAREST = 150;

  /** From the way in of a scene, in a picture of this size; without a door from the first edge. */
  static DoorCamera of(FloorScene scene, Optional<Line> wayIn, int width, int height) {
    Line gap = wayIn.orElseGet(() -> scene.walls().get(0).foot());
    List<Vec> ends = gap.points();
    Vec along = ends.get(ends.size() - 1).minus(ends.get(0)).unit();
    Vec in = along.left();
    Vec eye = ends.get(0).towards(ends.get(ends.size() - 1), 0.5).minus(in.times(BACK));
    Bounds b = scene.bounds();
    Vec way = b.middle().minus(eye);
    double turn = Math.atan2(in.cross(way), in.dot(way));
    double held = Math.max(-TURN, Math.min(TURN, turn));
    Vec ahead = in.times(Math.cos(held)).plus(in.left().times(Math.sin(held)));
    double focal = width / 2.0 / Math.tan(HALF_ANGLE);
    return new DoorCamera(eye, ahead, EYE, focal, width / 2.0, height * HORIZON);
  }

  /** The widest doorway that is a way in, else the widest, the floor to the left of its line. */
  static Optional<Line> wayIn(FloorScene scene) {
    Comparator<Line> width = Comparator.comparingDouble(Line::length);
    return scene.walls().stream()
        .flatMap(w -> w.waysIn().stream())
        .max(width)
        .or(() -> scene.walls().stream().flatMap(w -> w.openings().stream()).max(width));
  }

  Vec right() {
    return ahead.left().times(-1);
  }

  /** Distance ahead of the eye, mm. */
  double depth(Vec p) {
    return ahead.dot(p.minus(eye));
  }

  /** From a plane {@code above} the floor, site mm, to pixels; its depth is in mm ahead. */
  Homography toPixels(double above) {
    Vec r = right();
    double a = focal * r.x() + middle * ahead.x();
    double b = focal * r.y() + middle * ahead.y();
    double i = -ahead.dot(eye);
    return new Homography(
        a,
        b,
        -a * eye.x() - b * eye.y(),
        horizon * ahead.x(),
        horizon * ahead.y(),
        focal * (height - above) + horizon * i,
        ahead.x(),
        ahead.y(),
        i);
  }

  /** Where something {@code above} the floor at a depth is seen, y in pixels. */
  double y(double above, double depth) {
    return horizon + focal * (height - above) / depth;
  }

  /** Where in the plane a column of pixels looks: this way for each mm ahead. */
  Vec ray(double x) {
    return ahead.plus(right().times((x - middle) / focal));
  }
}
