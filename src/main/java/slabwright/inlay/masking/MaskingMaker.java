package slabwright.inlay.masking;

import java.util.ArrayList;
import java.util.List;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.panel.Seam;
import slabwright.inlay.stencil.Stencil;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.Region;

/** One making of the masking. */
final class MaskingMaker {
  private static final double ARC_TOLERANCE = 0.1;

  private final StencilSet set;
  private final PanelPlan plan;
  private final MaskingRules rules;

  MaskingMaker(StencilSet set, PanelPlan plan, MaskingRules rules) {
    this.set = set;
    this.plan = plan;
    this.rules = rules;
  }

  Masking make() {
    return make(skirt(), List.of());
  }

  Masking make(FloorAround around) {
    List<UprightMasking> upright = new UprightFinder(set.openings(), rules.overspray()).on(around);
    return make(skirt().intersect(around.floor()), upright);
  }

  private Masking make(Region skirt, List<UprightMasking> upright) {
    Region frame = lapsAndRim();
    List<Region> bands = new ArrayList<>();
    List<Region> rest = new ArrayList<>();
    for (Stencil stencil : set.stencils()) {
      Region near = stencil.openings().offset(rules.pressBand(), ARC_TOLERANCE).union(frame);
      bands.add(stencil.mask().intersect(near));
      rest.add(stencil.mask().minus(near));
    }
    return new Masking(bands, rest, skirt, PaperCutter.runs(skirt, set.blank(), rules), upright);
  }

  private Region skirt() {
    return set.openings()
        .offset(rules.overspray().reachMm(), ARC_TOLERANCE)
        .minus(Region.rectangle(set.blank()));
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
