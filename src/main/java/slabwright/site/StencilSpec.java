package slabwright.site;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;
import slabwright.units.Length;

/**
 * How a graphic is cut and masked.
 *
 * @param usable usable roll width; absent means roll − 2 × 12 mm
 * @param press width of the press band; the margin is at least as wide
 * @param colours what happens with each colour, dyes in laying order; empty means every colour is
 *     dyed
 * @param mergeDeltaE colours closer than this (CIE76) are one; 0 merges none
 * @param spread how far an opening grows into openings laid later
 * @param longestPiece longest panel the roll or the crew can handle
 * @param vinylHolds narrowest mask that the film holds
 * @param ties whether loose pieces are tied in, for a stiff reusable stencil
 * @param changes what a person accepted or set by hand
 */
@RecordBuilder
public record StencilSpec(
    Length roll,
    Optional<Length> usable,
    Length overlap,
    Length margin,
    Length press,
    Overspray overspray,
    List<ColourChoice> colours,
    double mergeDeltaE,
    Length spread,
    Optional<Length> longestPiece,
    Length vinylHolds,
    boolean ties,
    StencilChanges changes)
    implements StencilSpecBuilder.With {
  /** A first setting for a roll, all of it common practice, no source: ask the sign shop. */
  public static StencilSpec forRoll(Length roll) {
    return new StencilSpec(
        roll,
        Optional.empty(),
        Length.mm(12),
        Length.mm(50),
        Length.mm(50),
        new Overspray.Stated(Length.mm(450)),
        List.of(),
        0,
        Length.ZERO,
        Optional.empty(),
        Length.mm(3),
        false,
        StencilChanges.NONE);
  }

  public StencilSpec {
    colours = List.copyOf(colours);
  }

  /** Usable roll width in mm. */
  public double usableMm() {
    return usable.map(Length::mm).orElse(roll.mm() - 24);
  }
}
