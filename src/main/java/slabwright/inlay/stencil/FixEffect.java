package slabwright.inlay.stencil;

import slabwright.units.LengthFormat;
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
  /** One sentence for people. */
  public String words(UnitSystem units) {
    String size = QuantityFormat.smallArea(area, units);
    return switch (fix) {
      case WIDEN_VINYL ->
          "Vinyl thinner than %s widened in %s; %s less is dyed."
              .formatted(LengthFormat.fine(limit, units), count("place"), size);
      case DROP_SCRAPS ->
          "%s under %s left out; %s less is dyed."
              .formatted(count("scrap"), QuantityFormat.smallArea(limit, units), size);
      case DROP_LOOSE ->
          "%s under %s left out; %s more is dyed."
              .formatted(count("loose piece"), QuantityFormat.smallArea(limit, units), size);
      case ROUND_NEEDLES ->
          "%s of the opening rounded to a radius of %s; %s less is dyed."
              .formatted(count("needle point"), LengthFormat.fine(limit, units), size);
    };
  }

  private String count(String what) {
    return places + " " + what + (places == 1 ? "" : "s");
  }
}
