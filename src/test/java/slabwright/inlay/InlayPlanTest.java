package slabwright.inlay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.inlay.Graphics.box;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.inlay.InlayContext.OnFloor;
import slabwright.inlay.masking.FloorAround;
import slabwright.inlay.stencil.DyeLayer;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.StencilSpec;
import slabwright.units.Length;

class InlayPlanTest {
  private static final StencilSpec SPEC = StencilSpec.forRoll(Length.mm(1220));
  private static final DyedGraphic RING =
      new DyedGraphic(
          new Bounds(0, 0, 400, 400),
          List.of(new DyeLayer("#000000", 0, Graphics.squareRing())),
          List.of());

  @Test
  void openings_and_mask_make_up_the_blank() {
    InlayPlan plan = InlayPlan.of(RING, SPEC, InlayContext.graphicAlone());
    assertThat(plan.openingArea()).isCloseTo(120_000, within(1e-6));
    assertThat(plan.blankArea()).isCloseTo(250_000, within(1e-6));
    assertThat(plan.maskArea()).isCloseTo(130_000, within(1e-6));
    assertThat(plan.loosePieces()).isEqualTo(1);
    assertThat(plan.rollLength()).isEqualTo(500);
  }

  @Test
  void the_middle_of_the_painted_bounds_lies_where_it_was_placed() {
    OnFloor floor =
        new OnFloor(
            new Placement(new Vec(5000, 3000), 0),
            new FloorAround(box(4000, 2000, 9000, 9000), List.of()));
    InlayPlan plan = InlayPlan.of(RING, SPEC, InlayContext.graphicAlone().on(floor));
    Vec middle = plan.toSite().orElseThrow().apply(plan.stencils().blank().middle());
    assertThat(middle.distanceTo(new Vec(5000, 3000))).isLessThan(1e-9);
    Vec topLeft = plan.toSite().orElseThrow().apply(Vec.ZERO);
    assertThat(topLeft.distanceTo(new Vec(4750, 3250))).isLessThan(1e-9);
  }

  @Test
  void a_quarter_turn_counter_clockwise_points_the_top_to_the_left() {
    OnFloor floor =
        new OnFloor(
            new Placement(new Vec(5000, 3000), 90),
            new FloorAround(box(0, 0, 9000, 9000), List.of()));
    InlayPlan plan = InlayPlan.of(RING, SPEC, InlayContext.graphicAlone().on(floor));
    Vec topMiddle = plan.toSite().orElseThrow().apply(new Vec(250, 0));
    assertThat(topMiddle.distanceTo(new Vec(4750, 3000))).isLessThan(1e-9);
  }

  @Test
  void the_skirt_is_clipped_to_the_floor_it_lies_on() {
    OnFloor floor =
        new OnFloor(
            new Placement(new Vec(5000, 3000), 0),
            new FloorAround(box(4750, 2750, 9000, 9000), List.of()));
    InlayPlan alone = InlayPlan.of(RING, SPEC, InlayContext.graphicAlone());
    InlayPlan placed = InlayPlan.of(RING, SPEC, InlayContext.graphicAlone().on(floor));
    assertThat(placed.skirtArea()).isLessThan(alone.skirtArea() / 2);
  }

  @Test
  void a_graphic_with_no_dyed_colour_is_said_and_planned_no_further() {
    DyedGraphic empty = new DyedGraphic(Bounds.EMPTY, List.of(), List.of());
    InlayPlan plan = InlayPlan.of(empty, SPEC, InlayContext.graphicAlone());
    assertThat(plan.panels()).isEmpty();
    assertThat(plan.findings()).hasSize(1);
  }

  @Test
  void an_impossible_overlap_is_said_and_planned_no_further() {
    StencilSpec narrow = StencilSpec.forRoll(Length.mm(60));
    InlayPlan plan = InlayPlan.of(RING, narrow, InlayContext.graphicAlone());
    assertThat(plan.panels()).isEmpty();
    assertThat(plan.findings()).isNotEmpty();
  }
}
