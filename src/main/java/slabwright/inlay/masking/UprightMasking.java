package slabwright.inlay.masking;

import java.util.OptionalDouble;
import slabwright.shape.Line;
import slabwright.units.Message;

/**
 * Masking that stands up where mist meets a wall, glass or a doorway.
 *
 * @param what it protects
 * @param foot the stretch on the floor, in the blank's frame
 * @param height how high, mm; empty when only a reach was stated and no nozzle height is known
 */
public record UprightMasking(Message what, Line foot, OptionalDouble height) {
  /** Length of the stretch in mm. */
  public double length() {
    return foot.length();
  }
}
