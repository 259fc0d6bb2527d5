package slabwright.inlay.stencil;

import java.util.OptionalDouble;

/**
 * How stencils are made from colours. Lengths in mm.
 *
 * @param margin vinyl left around the openings, to the blank's edge
 * @param pressBand width of the band pressed down along opening edges
 * @param spread how far an opening grows into openings laid later; 0 for none
 * @param perColour one stencil a colour; false puts all colours into one stencil
 * @param baseLightness CIE L* of the base dye (layer 0) when there is one
 * @param fixes what a person accepted
 */
public record StencilParameters(
    double margin,
    double pressBand,
    double spread,
    boolean perColour,
    OptionalDouble baseLightness,
    AcceptedFixes fixes) {

  /** Two inches of margin and of press band, no spread, one stencil a colour, no base dye. */
  public static StencilParameters usual() {
    return new StencilParameters(50.8, 50.8, 0, true, OptionalDouble.empty(), AcceptedFixes.NONE);
  }

  public StencilParameters withMargin(double mm) {
    return new StencilParameters(mm, pressBand, spread, perColour, baseLightness, fixes);
  }

  public StencilParameters withPressBand(double mm) {
    return new StencilParameters(margin, mm, spread, perColour, baseLightness, fixes);
  }

  public StencilParameters withSpread(double mm) {
    return new StencilParameters(margin, pressBand, mm, perColour, baseLightness, fixes);
  }

  public StencilParameters asOneStencil() {
    return new StencilParameters(margin, pressBand, spread, false, baseLightness, fixes);
  }

  public StencilParameters overBase(double lightness) {
    return new StencilParameters(
        margin, pressBand, spread, perColour, OptionalDouble.of(lightness), fixes);
  }

  public StencilParameters withFixes(AcceptedFixes accepted) {
    return new StencilParameters(margin, pressBand, spread, perColour, baseLightness, accepted);
  }
}
