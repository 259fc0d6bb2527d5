package slabwright.inlay.stencil;

import io.soabase.recordbuilder.core.RecordBuilder;
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
@RecordBuilder
public record StencilParameters(
    double margin,
    double pressBand,
    double spread,
    boolean perColour,
    OptionalDouble baseLightness,
    AcceptedFixes fixes)
    implements StencilParametersBuilder.With {

  /** Two inches of margin and of press band, no spread, one stencil a colour, no base dye. */
  public static StencilParameters usual() {
    return new StencilParameters(50.8, 50.8, 0, true, OptionalDouble.empty(), AcceptedFixes.NONE);
  }

  public StencilParameters asOneStencil() {
    return new StencilParameters(margin, pressBand, spread, false, baseLightness, fixes);
  }

  public StencilParameters overBase(double lightness) {
    return new StencilParameters(
        margin, pressBand, spread, perColour, OptionalDouble.of(lightness), fixes);
  }
}
