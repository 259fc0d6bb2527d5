package slabwright.inlay.masking;

import java.util.ArrayList;
import java.util.List;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.panel.Seam;
import slabwright.inlay.stencil.Stencil;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.FillRule;
import slabwright.shape.Region;

/** One making of the masking. */
final class MaskingBuilder {
  /** Far finer than a hand presses or paper is laid. */
  private static final double BAND_TOLERANCE = 0.5;

  private static final double PAPER_TOLERANCE = 1;

  private final StencilSet set;
  private final PanelPlan plan;
  private final MaskingParameters rules;
  private final Region openings;

  MaskingBuilder(StencilSet set, PanelPlan plan, MaskingParameters rules) {
    this.set = set;
    this.plan = plan;
    this.rules = rules;
    openings = set.openings();
  }

  Masking make() {
    return make(skirt(reached()), List.of());
  }

  Masking make(FloorAround around) {
    Region reached = reached();
    UprightFinder finder = new UprightFinder(openings, reached, rules.overspray());
    return make(skirt(reached).intersect(around.floor()), finder.on(around));
  }

  private Masking make(Region skirt, List<UprightMasking> upright) {
    Region frame = lapsAndRim();
    List<Region> bands = new ArrayList<>();
    List<Region> rest = new ArrayList<>();
    for (Stencil stencil : set.stencils()) {
      Region near = near(stencil.openings()).union(frame);
      bands.add(stencil.mask().intersect(near));
      rest.add(stencil.mask().minus(near));
    }
    return new Masking(
        bands, rest, skirt, PaperRunPlanner.runs(skirt, set.blank(), rules), upright);
  }

  private Region near(Region openings) {
    return openings.grown(rules.pressBand(), BAND_TOLERANCE);
  }

  /** Where mist lands. Holes of openings lie inside the blank, where the skirt has no part. */
  private Region reached() {
    Region filled = Region.of(openings.shells(), FillRule.NONZERO);
    return filled.grown(rules.overspray().reachMm(), PAPER_TOLERANCE);
  }

  private Region skirt(Region reached) {
    return reached.minus(Region.rectangle(set.blank()));
  }

  private Region lapsAndRim() {
    Region blank = Region.rectangle(set.blank());
    List<Region> parts = new ArrayList<>();
    parts.add(blank.minus(Region.rectangle(set.blank().grown(-rules.pressBand()))));
    for (Seam seam : plan.laps()) {
      parts.add(Region.rectangle(seam.lap().grown(rules.pressBand())).intersect(blank));
    }
    return Region.union(parts);
  }
}
