package slabwright.desk.tool;

import slabwright.desk.model.input.Snap;
import slabwright.shape.Vec;

/**
 * Where the pointer is and how it is held.
 *
 * @param raw the place under the pointer, mm on the site
 * @param snap where it is drawn to
 * @param reach how far a touch reaches, mm at the present scale
 */
public record Touch(Vec raw, Snap snap, double reach, boolean shift, boolean more, int clicks) {
  public Vec at() {
    return snap.at();
  }
}
