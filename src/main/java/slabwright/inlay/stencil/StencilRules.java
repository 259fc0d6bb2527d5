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
public record StencilRules(
    double margin,
    double pressBand,
    double spread,
    boolean perColour,
    OptionalDouble baseLightness,
    StencilFixes fixes) {

  /** Two inches of margin and of press band, no spread, one stencil a colour, no base dye. */
  public static StencilRules usual() {
    return new StencilRules(50.8, 50.8, 0, true, OptionalDouble.empty(), StencilFixes.NONE);
  }

  public StencilRules withMargin(double mm) {
    return new StencilRules(mm, pressBand, spread, perColour, baseLightness, fixes);
  }

  public StencilRules withPressBand(double mm) {
    return new StencilRules(margin, mm, spread, perColour, baseLightness, fixes);
  }

  public StencilRules withSpread(double mm) {
    return new StencilRules(margin, pressBand, mm, perColour, baseLightness, fixes);
  }

  public StencilRules asOneStencil() {
    return new StencilRules(margin, pressBand, spread, false, baseLightness, fixes);
  }

  public StencilRules overBase(double lightness) {
    return new StencilRules(
        margin, pressBand, spread, perColour, OptionalDouble.of(lightness), fixes);
  }

  public StencilRules withFixes(StencilFixes accepted) {
    return new StencilRules(margin, pressBand, spread, perColour, baseLightness, accepted);
  }
}
