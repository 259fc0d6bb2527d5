package slabwright.inlay;

import java.util.Optional;
import slabwright.inlay.masking.MaskingRules;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.panel.PanelRules;
import slabwright.inlay.panel.Roll;
import slabwright.inlay.panel.SeamPlanner;
import slabwright.inlay.panel.Turn;
import slabwright.inlay.stencil.StencilCheck;
import slabwright.inlay.stencil.StencilFixes;
import slabwright.inlay.stencil.StencilLimits;
import slabwright.inlay.stencil.StencilRules;
import slabwright.site.HandSeams;
import slabwright.site.StencilChanges;
import slabwright.site.StencilSpec;
import slabwright.units.Length;

/** The person's settings, sorted by who needs them. */
record InlayRules(
    StencilRules stencil,
    PanelRules panel,
    MaskingRules masking,
    StencilCheck check,
    double tieWidth,
    Optional<HandSeams> seams) {
  /** A tie is twice as wide as the narrowest mask that holds, common practice, no source. */
  private static final double TIE = 2;

  static InlayRules of(StencilSpec spec, InlayContext context) {
    StencilChanges changes = spec.changes();
    double longest = spec.longestPiece().map(Length::mm).orElse(Double.POSITIVE_INFINITY);
    return new InlayRules(
        new StencilRules(
            spec.margin().mm(),
            spec.press().mm(),
            spec.spread().mm(),
            context.perColour(),
            changes.baseLightness(),
            fixes(changes)),
        PanelRules.usual()
            .withRoll(new Roll(spec.roll().mm(), spec.usableMm(), longest))
            .withOverlap(spec.overlap().mm())
            .withTrafficFrom(context.trafficFrom()),
        MaskingRules.of(spec.press().mm(), spec.overspray()),
        new StencilCheck(StencilLimits.forFilm(spec.vinylHolds().mm()), context.units()),
        changes.tieWidth().map(Length::mm).orElse(TIE * spec.vinylHolds().mm()),
        changes.seams());
  }

  /** Seams where a person put them, else where they cost least. */
  PanelPlan panels(SeamPlanner planner) {
    return seams
        .map(s -> planner.at(Turn.of(s.strips()), s.places().stream().map(Length::mm).toList()))
        .orElseGet(planner::best);
  }

  private static StencilFixes fixes(StencilChanges c) {
    return new StencilFixes(
        c.dropUnder().orElse(0),
        c.fillUnder().orElse(0),
        c.roundNeedles().map(Length::mm).orElse(0.0),
        c.thickenMask().map(Length::mm).orElse(0.0));
  }
}
