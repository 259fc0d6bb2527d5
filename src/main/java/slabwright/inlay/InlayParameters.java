package slabwright.inlay;

import java.util.Optional;
import slabwright.inlay.masking.MaskingParameters;
import slabwright.inlay.panel.PanelParameters;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.panel.Roll;
import slabwright.inlay.panel.SeamPlanner;
import slabwright.inlay.panel.StripDirection;
import slabwright.inlay.stencil.AcceptedFixes;
import slabwright.inlay.stencil.StencilCheck;
import slabwright.inlay.stencil.StencilLimits;
import slabwright.inlay.stencil.StencilParameters;
import slabwright.site.HandSeams;
import slabwright.site.StencilChanges;
import slabwright.site.StencilSpec;
import slabwright.units.Length;

/** The person's settings, sorted by who needs them. */
record InlayParameters(
    StencilParameters stencil,
    PanelParameters panel,
    MaskingParameters masking,
    StencilCheck check,
    double tieWidth,
    Optional<HandSeams> seams) {
  /** A tie is twice as wide as the narrowest mask that holds, common practice, no source. */
  private static final double TIE = 2;

  static InlayParameters of(StencilSpec spec, InlayContext context) {
    StencilChanges changes = spec.changes();
    double longest = spec.longestPiece().map(Length::mm).orElse(Roll.LONGEST_PIECE);
    return new InlayParameters(
        new StencilParameters(
            spec.margin().mm(),
            spec.press().mm(),
            spec.spread().mm(),
            context.perColour(),
            changes.baseLightness(),
            fixes(changes)),
        PanelParameters.usual()
            .withRoll(new Roll(spec.roll().mm(), spec.usableMm(), longest))
            .withOverlap(spec.overlap().mm())
            .withTrafficFrom(context.trafficFrom()),
        MaskingParameters.of(spec.press().mm(), spec.overspray()),
        new StencilCheck(StencilLimits.forFilm(spec.vinylHolds().mm()), context.units()),
        changes.tieWidth().map(Length::mm).orElse(TIE * spec.vinylHolds().mm()),
        changes.seams());
  }

  /** Seams where a person put them, else where they cost least. */
  PanelPlan panels(SeamPlanner planner) {
    return seams
        .map(
            s ->
                planner.at(
                    StripDirection.of(s.strips()), s.places().stream().map(Length::mm).toList()))
        .orElseGet(planner::best);
  }

  private static AcceptedFixes fixes(StencilChanges c) {
    return new AcceptedFixes(
        c.dropUnder().orElse(0),
        c.fillUnder().orElse(0),
        c.roundNeedles().map(Length::mm).orElse(0.0),
        c.thickenMask().map(Length::mm).orElse(0.0));
  }
}
