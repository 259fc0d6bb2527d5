package slabwright.inlay;

import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;

/**
 * Where a graphic lies on the site.
 *
 * @param middle where the centre of the painted bounds lies, site mm (x right, y up)
 * @param turn degrees counter-clockwise of the graphic's "up" from the site's
 */
public record Placement(Vec middle, double turn) {
  /**
   * From a frame with y down to the site.
   *
   * @param painted the painted bounds in that frame
   */
  public Affine toSite(Bounds painted) {
    Vec c = painted.middle();
    return Affine.move(-c.x(), -c.y())
        .then(Affine.scale(1, -1))
        .then(Affine.turn(Math.toRadians(turn)))
        .then(Affine.move(middle.x(), middle.y()));
  }
}
