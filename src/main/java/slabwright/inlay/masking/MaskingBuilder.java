package slabwright.inlay.masking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.panel.Seam;
import slabwright.inlay.stencil.Stencil;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.Bounds;
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
    return make(skirt(reached(openings), List.of(set.blank())), List.of(), Optional.empty());
  }

  Masking make(FloorAround around) {
    Region reached = reached(openings);
    UprightFinder finder = new UprightFinder(openings, reached, rules.overspray());
    Region skirt = skirt(reached, List.of(set.blank())).intersect(around.floor());
    return make(skirt, finder.on(around), Optional.of(around.floor()));
  }

  private Masking make(Region skirt, List<UprightMasking> upright, Optional<Region> floor) {
    Region frame = lapsAndRim(plan);
    List<Region> bands = new ArrayList<>();
    List<Region> rest = new ArrayList<>();
    List<Region> skirts = new ArrayList<>();
    for (Stencil stencil : set.stencils()) {
      PanelPlan own = plan.of(stencil);
      boolean local = plan.isLocal(stencil);
      Region near = near(stencil.openings()).union(local ? lapsAndRim(own) : frame);
      Region paper = local ? skirt(reached(stencil.openings()), own.blanks()) : skirt;
      skirts.add(local && floor.isPresent() ? paper.intersect(floor.get()) : paper);
      Region loose = loose(stencil, own, near);
      bands.add(stencil.mask().minusLarge(loose));
      rest.add(loose);
    }
    List<PaperRun> paper =
        plan.panels().isEmpty() ? List.of() : PaperRunPlanner.runs(skirt, set.blank(), rules);
    return new Masking(bands, rest, skirts, skirt, paper, upright);
  }

  /**
   * The mask that is not near. A band wider than its tolerance holds all openings, so that nothing
   * but the blank needs cutting.
   */
  private Region loose(Stencil stencil, PanelPlan own, Region near) {
    boolean holdsOpenings = rules.pressBand() > BAND_TOLERANCE;
    return (holdsOpenings ? films(own.blanks()) : stencil.mask()).minus(near);
  }

  private Region near(Region openings) {
    return openings.grown(rules.pressBand(), BAND_TOLERANCE);
  }

  /** Where mist lands. Holes of openings lie inside the blank, where the skirt has no part. */
  private Region reached(Region openings) {
    Region filled = Region.of(openings.shells(), FillRule.NONZERO);
    return filled.grown(rules.overspray().reachMm(), PAPER_TOLERANCE);
  }

  private static Region skirt(Region reached, List<Bounds> blanks) {
    return reached.minus(films(blanks));
  }

  private static Region films(List<Bounds> blanks) {
    return blanks.size() == 1
        ? Region.rectangle(blanks.get(0))
        : Region.union(blanks.stream().map(Region::rectangle).toList());
  }

  private Region lapsAndRim(PanelPlan of) {
    Region blank = films(of.blanks());
    List<Region> parts = new ArrayList<>();
    for (Bounds b : of.blanks()) {
      Bounds loose = b.grown(-rules.pressBand());
      Region whole = Region.rectangle(b);
      parts.add(loose.isEmpty() ? whole : whole.minus(Region.rectangle(loose)));
    }
    for (Seam seam : of.laps()) {
      parts.add(Region.rectangle(seam.lap().grown(rules.pressBand())).intersect(blank));
    }
    return Region.union(parts);
  }
}
