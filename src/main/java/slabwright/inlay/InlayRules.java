package slabwright.inlay;

import java.util.OptionalDouble;
import slabwright.inlay.masking.MaskingRules;
import slabwright.inlay.panel.PanelRules;
import slabwright.inlay.panel.Roll;
import slabwright.inlay.stencil.StencilRules;
import slabwright.site.StencilSpec;
import slabwright.units.Length;

/** The person's settings, sorted by who needs them. */
record InlayRules(StencilRules stencil, PanelRules panel, MaskingRules masking) {
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
        MaskingRules.of(spec.press().mm(), spec.overspray()));
  }
}
