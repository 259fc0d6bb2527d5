package slabwright.inlay.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static slabwright.inlay.Graphics.box;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.inlay.Graphics;
import slabwright.inlay.stencil.DyeLayer;
import slabwright.inlay.stencil.StencilParameters;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.words.Words;

/** Registration ticks: three on every panel, not in line, on film of every colour. */
class RegistrationTest {
  private static StencilSet colours(StencilParameters rules) {
    return StencilSet.of(
        List.of(
            new DyeLayer("black", 0, Graphics.letterF(1600)),
            new DyeLayer("red", 50, Graphics.squareRing().map(Affine.move(1200, 200))),
            new DyeLayer("blue", 30, box(500, 1300, 2000, 1600))),
        rules);
  }

  private static void everyPanelIsHeld(StencilSet set, PanelPlan plan) {
    Region open = set.openings();
    for (Panel panel : plan.panels()) {
      List<RegistrationTick> ticks = plan.ticks(panel);
      assertThat(RegistrationPlacer.holds(panel, ticks)).as(panel.name()).isTrue();
      for (RegistrationTick tick : ticks) {
        assertThat(open.distanceTo(tick.at()) - RegistrationTick.ARM).isGreaterThanOrEqualTo(10);
        assertThat(panel.box().grown(-RegistrationTick.ARM).contains(tick.at())).isTrue();
      }
    }
  }

  @Test
  void one_panel_with_three_colours_has_three_ticks_not_in_line() {
    StencilSet set =
        StencilSet.of(
            List.of(
                new DyeLayer("black", 0, Graphics.letterF(500)),
                new DyeLayer("red", 50, box(350, 250, 500, 300)),
                new DyeLayer("blue", 30, box(350, 350, 600, 450))),
            StencilParameters.usual());
    PanelPlan plan = new SeamPlanner(set, PanelParameters.usual()).best();
    assertThat(plan.panels()).hasSize(1);
    assertThat(plan.ticks()).hasSizeGreaterThanOrEqualTo(3);
    everyPanelIsHeld(set, plan);
  }

  @Test
  void every_panel_of_three_colours_is_held() {
    StencilSet set = colours(StencilParameters.usual());
    PanelPlan plan =
        new SeamPlanner(set, PanelParameters.usual())
            .at(StripDirection.DOWN, List.of(700.0, 1400.0));
    everyPanelIsHeld(set, plan);
    assertThat(plan.findings()).isEmpty();
  }

  @Test
  void a_panel_that_is_opening_to_its_rim_says_that_it_has_no_room() {
    StencilSet set =
        StencilSet.of(
            List.of(new DyeLayer("black", 0, box(0, 0, 500, 500))),
            StencilParameters.usual().withMargin(6).withPressBand(6));
    PanelPlan plan = new SeamPlanner(set, PanelParameters.usual()).best();
    assertThat(plan.findings())
        .extracting(f -> Words.english().say(f.message()))
        .anyMatch(s -> s.startsWith("Panel A has room for no registration tick where it needs"));
  }

  @Test
  void ticks_in_one_line_do_not_hold_a_panel() {
    Panel panel = new Panel("A", new Bounds(0, 0, 1000, 1000));
    List<RegistrationTick> line = List.of(tick(1, 100, 100), tick(2, 500, 110), tick(3, 900, 100));
    assertThat(RegistrationPlacer.holds(panel, line)).isFalse();
    assertThat(
            RegistrationPlacer.holds(
                panel, List.of(tick(1, 100, 100), tick(2, 500, 900), tick(3, 900, 100))))
        .isTrue();
  }

  private static RegistrationTick tick(int n, double x, double y) {
    return new RegistrationTick(n, new Vec(x, y));
  }
}
