package slabwright.inlay.panel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import slabwright.inlay.RandomGraphic;
import slabwright.inlay.stencil.DyeLayer;
import slabwright.inlay.stencil.Stencil;
import slabwright.inlay.stencil.StencilParameters;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.Region;

class PanelPropertyTest {
  private static final PanelParameters RULES =
      PanelParameters.usual().withRoll(Roll.ofWidth(624).withLongestPiece(1100)).withPitch(40);

  @Property(tries = 8)
  void panels_cover_the_blank_and_fit_the_roll(@ForAll long seed) {
    PanelPlan plan = new SeamPlanner(graphic(seed), RULES).best();
    List<Region> boxes = plan.panels().stream().map(p -> Region.rectangle(p.box())).toList();
    assertThat(Region.rectangle(plan.blank()).minus(Region.union(boxes)).area()).isZero();
    for (Panel panel : plan.panels()) {
      assertThat(plan.turn().across(panel.box())).isLessThanOrEqualTo(600.0005);
      assertThat(plan.turn().along(panel.box())).isLessThanOrEqualTo(1100.0005);
    }
  }

  /** The same of many more. */
  @Tag("long")
  @Property(tries = 200)
  void panels_cover_the_blank_and_fit_the_roll_of_200(@ForAll long seed) {
    panels_cover_the_blank_and_fit_the_roll(seed);
  }

  @Property(tries = 8)
  void panels_laid_with_their_overlaps_rebuild_every_opening(@ForAll long seed) {
    StencilSet set = graphic(seed);
    PanelPlan plan = new SeamPlanner(set, RULES).best();
    for (Stencil stencil : set.stencils()) {
      Region laid =
          Region.union(
              plan.panels().stream()
                  .map(p -> Region.rectangle(p.box()).minus(p.openings(stencil)))
                  .toList());
      Region open = Region.rectangle(plan.blank()).minus(laid);
      assertThat(difference(open, stencil.openings())).isLessThan(1e-3 * stencil.cutLength());
    }
  }

  /** The same of many more. */
  @Tag("long")
  @Property(tries = 200)
  void panels_laid_with_their_overlaps_rebuild_every_opening_of_200(@ForAll long seed) {
    panels_laid_with_their_overlaps_rebuild_every_opening(seed);
  }

  private static double difference(Region a, Region b) {
    return a.minus(b).area() + b.minus(a).area();
  }

  private static StencilSet graphic(long seed) {
    Region art = new RandomGraphic(seed, 1500).region();
    return StencilSet.of(List.of(new DyeLayer("black", 0, art)), StencilParameters.usual());
  }
}
