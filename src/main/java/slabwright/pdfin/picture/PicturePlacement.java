package slabwright.pdfin.picture;

import java.util.Optional;
import slabwright.shape.Affine;
import slabwright.shape.Vec;

/** Ways to lay a picture (x right, y down) on the site (millimetres, y up) in true scale. */
public final class PicturePlacement {
  private PicturePlacement() {}

  /**
   * Upright, by two points of the picture and the true distance between them; the first point comes
   * to lie on {@code at}.
   *
   * @param mm the distance on the floor
   * @return empty when the points are the same or the distance is not more than nothing
   */
  public static Optional<Affine> byLength(Vec first, Vec second, double mm, Vec at) {
    double pixels = first.distanceTo(second);
    if (!(pixels > 0) || !(mm > 0)) {
      return Optional.empty();
    }
    double k = mm / pixels;
    return Optional.of(
        Affine.move(-first.x(), -first.y())
            .then(Affine.scale(k, -k))
            .then(Affine.move(at.x(), at.y())));
  }

  /**
   * Turned and scaled so that two points of the picture lie on two points of the site.
   *
   * @return empty when either pair is one point twice
   */
  public static Optional<Affine> byTwoPoints(Vec first, Vec second, Vec siteFirst, Vec siteSecond) {
    Vec there = siteSecond.minus(siteFirst);
    return byLength(first, second, there.length(), Vec.ZERO)
        .map(
            upright -> {
              double turn = there.angle() - upright.apply(second).angle();
              return upright
                  .then(Affine.turn(turn))
                  .then(Affine.move(siteFirst.x(), siteFirst.y()));
            });
  }
}
