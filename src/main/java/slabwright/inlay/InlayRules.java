package slabwright.inlay;

import java.util.OptionalDouble;
import slabwright.inlay.masking.MaskingRules;
import slabwright.inlay.panel.PanelRules;
import slabwright.inlay.panel.Roll;
import slabwright.inlay.stencil.StencilCheck;
import slabwright.inlay.stencil.StencilLimits;
import slabwright.inlay.stencil.StencilRules;
import slabwright.site.StencilSpec;
import slabwright.units.Length;
import slabwright.units.LengthFormat;
import slabwright.units.UnitSystem;

/** The person's settings, sorted by who needs them. */
record InlayRules(
    StencilRules stencil,
    PanelRules panel,
    MaskingRules masking,
    StencilCheck check,
    double tieWidth) {
  /** A tie is twice as wide as the narrowest mask that holds, common practice, no source. */
  private static final double TIE = 2;

  static InlayRules of(StencilSpec spec, InlayContext context) {
    double longest = spec.longestPiece().map(Length::mm).orElse(Double.POSITIVE_INFINITY);
    return new InlayRules(
        new StencilRules(
            spec.margin().mm(),
            spec.press().mm(),
            spec.spread().mm(),
            context.perColour(),
            context.baseLightness().map(OptionalDouble::of).orElse(OptionalDouble.empty())),
        PanelRules.usual()
            .withRoll(new Roll(spec.roll().mm(), spec.usableMm(), longest))
            .withOverlap(spec.overlap().mm())
            .withTrafficFrom(context.trafficFrom()),
        MaskingRules.of(spec.press().mm(), spec.overspray()),
        new StencilCheck(
            StencilLimits.forFilm(spec.vinylHolds().mm()), mm -> show(mm, context.units())),
        TIE * spec.vinylHolds().mm());
  }

  /** Small widths to a tenth of a millimetre, after inches where the person thinks in them. */
  private static String show(double mm, UnitSystem units) {
    String fine = LengthFormat.plain(Math.rint(mm * 10) / 10) + " mm";
    return units == UnitSystem.METRIC ? fine : LengthFormat.show(mm, units) + " (" + fine + ")";
  }
}
