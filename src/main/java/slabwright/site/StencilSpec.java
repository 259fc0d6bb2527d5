package slabwright.site;

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
    StencilChanges changes) {
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

  public StencilSpec withColours(List<ColourChoice> v) {
    return copy(v, mergeDeltaE, ties, changes);
  }

  public StencilSpec withMergeDeltaE(double v) {
    return copy(colours, v, ties, changes);
  }

  public StencilSpec withTies(boolean v) {
    return copy(colours, mergeDeltaE, v, changes);
  }

  public StencilSpec withChanges(StencilChanges v) {
    return copy(colours, mergeDeltaE, ties, v);
  }

  /** The same film, laid and cut the same, with what a person chooses for the graphic. */
  private StencilSpec copy(
      List<ColourChoice> choices, double merge, boolean tied, StencilChanges changed) {
    return new StencilSpec(
        roll,
        usable,
        overlap,
        margin,
        press,
        overspray,
        choices,
        merge,
        spread,
        longestPiece,
        vinylHolds,
        tied,
        changed);
  }

  /** Usable roll width in mm. */
  public double usableMm() {
    return usable.map(Length::mm).orElse(roll.mm() - 24);
  }
}
