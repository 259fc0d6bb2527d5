package slabwright.site;

import java.util.List;
import slabwright.shape.Affine;
import slabwright.shape.Vec;

/**
 * A rigid move of points on the site: a turn about the origin, then a shift.
 *
 * @param turn degrees counter-clockwise
 * @param shift mm
 */
public record Move(double turn, Vec shift) {
  public static Move by(double dx, double dy) {
    return new Move(0, new Vec(dx, dy));
  }

  /** A turn about a point. */
  public static Move turnAbout(Vec pivot, double degrees) {
    Vec turned = Affine.turn(Math.toRadians(degrees)).apply(pivot);
    return new Move(degrees, pivot.minus(turned));
  }

  /** The move that takes the start and direction of one wall to those of another. */
  public static Move between(Vec from, Vec fromEnd, Vec to, Vec toEnd) {
    double turn = toEnd.minus(to).angle() - fromEnd.minus(from).angle();
    Vec turned = Affine.turn(turn).apply(from);
    return new Move(Math.toDegrees(turn), to.minus(turned));
  }

  public Spot spot(Spot s) {
    if (turn == 0 && shift.equals(Vec.ZERO)) {
      return s;
    }
    Vec p = s.vec();
    Vec turned = turn == 0 ? p : Affine.turn(Math.toRadians(turn)).apply(p);
    return Spot.of(turned.plus(shift));
  }

  /** The same angle from 0 up to 360 degrees. */
  public static double positive(double degrees) {
    double d = degrees % 360;
    return d < 0 ? d + 360 : d + 0.0;
  }

  List<Spot> spots(List<Spot> all) {
    return all.stream().map(this::spot).toList();
  }
}
