package slabwright.inlay.stencil;

import slabwright.units.LengthFormat;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;

/**
 * What an accepted fix changed of one stencil.
 *
 * @param layer the stencil's place in the laying order, from 1
 * @param limit the width, mm, or area, mm², that was asked for
 * @param places in how many places something changed
 * @param area how much of the opening came or went, mm²
 */
public record FixEffect(FixKind fix, int layer, double limit, int places, double area) {
  /**
   * One sentence for people.
   *
   * @param units in which sizes are written
   */
  public Message said(UnitSystem units) {
    String size = QuantityFormat.smallArea(area, units);
    String width = LengthFormat.fine(limit, units);
    String least = QuantityFormat.smallArea(limit, units);
    return switch (fix) {
      case WIDEN_VINYL -> Message.of("inlay.fix-effect.vinyl-widened", width, places, size);
      case DROP_SCRAPS -> Message.of("inlay.fix-effect.scraps-left-out", places, least, size);
      case DROP_LOOSE -> Message.of("inlay.fix-effect.loose-pieces-left-out", places, least, size);
      case ROUND_NEEDLES -> Message.of("inlay.fix-effect.needles-rounded", places, width, size);
    };
  }
}
