package slabwright.desk.tool;

import slabwright.units.LengthFormat;
import slabwright.units.UnitSystem;

/**
 * What a tool must know to draw over the plan.
 *
 * @param mm site millimetres to one millimetre of screen paper
 */
public record OverlayScale(double mm, UnitSystem units) {
  public String length(double v) {
    return LengthFormat.show(v, units);
  }
}
