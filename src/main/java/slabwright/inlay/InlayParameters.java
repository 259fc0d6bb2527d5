package slabwright.inlay;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slabwright.inlay.masking.MaskingParameters;
import slabwright.inlay.panel.LocalBlankPlanner;
import slabwright.inlay.panel.PanelParameters;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.panel.Roll;
import slabwright.inlay.panel.SeamPlanner;
import slabwright.inlay.panel.StripDirection;
import slabwright.inlay.stencil.AcceptedFixes;
import slabwright.inlay.stencil.StencilCheck;
import slabwright.inlay.stencil.StencilLimits;
import slabwright.inlay.stencil.StencilParameters;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.Bounds;
import slabwright.site.HandSeams;
import slabwright.site.LocalBlank;
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
    Optional<HandSeams> seams,
    List<LocalBlank> blanks) {
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
        changes.seams(),
        changes.blanks());
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

  /**
   * The same with local blanks: those that a person set, and where nobody set seams those that
   * spare something.
   *
   * @param painted of the graphic, in the blank's frame
   */
  LocalBlankPlanner.Planned panels(StencilSet set, SeamPlanner planner, Bounds painted) {
    double margin = Math.max(stencil.margin(), stencil.pressBand());
    Map<String, List<Bounds>> byHand = new HashMap<>();
    for (LocalBlank b : blanks) {
      double x = painted.minX() + b.corner().x().mm();
      double y = painted.minY() + b.corner().y().mm();
      byHand
          .computeIfAbsent(b.colour(), c -> new ArrayList<>())
          .add(new Bounds(x, y, x + b.width().mm(), y + b.height().mm()));
    }
    return new LocalBlankPlanner(set, panels(planner), panel, margin, masking.overspray().reachMm())
        .plan(byHand, seams.isEmpty());
  }

  private static AcceptedFixes fixes(StencilChanges c) {
    return new AcceptedFixes(
        c.dropUnder().orElse(0),
        c.fillUnder().orElse(0),
        c.roundNeedles().map(Length::mm).orElse(0.0),
        c.thickenMask().map(Length::mm).orElse(0.0));
  }
}
