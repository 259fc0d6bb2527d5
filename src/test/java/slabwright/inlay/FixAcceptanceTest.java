package slabwright.inlay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.inlay.Graphics.box;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tag;
import org.junit.jupiter.api.Test;
import slabwright.inlay.stencil.DyeLayer;
import slabwright.inlay.stencil.FixEffect;
import slabwright.inlay.stencil.FixKind;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.site.HandSeams;
import slabwright.site.StencilSpec;
import slabwright.units.Length;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

class FixAcceptanceTest {
  private static final StencilSpec SPEC = StencilSpec.forRoll(Length.mm(1220));

  @Test
  void widened_vinyl_is_said_no_more_and_counted_once() {
    Region bars = box(0, 0, 200, 100).union(box(0, 102, 200, 200));
    InlayPlan plan = mended(bars, FixKind.WIDEN_VINYL);
    assertThat(plan.findings()).noneMatch(f -> Words.english().say(f.message()).contains("thin"));
    FixEffect change = plan.stencils().changes().get(0);
    assertThat(change.fix()).isEqualTo(FixKind.WIDEN_VINYL);
    assertThat(bars.area() - plan.openingArea()).isCloseTo(change.area(), within(1e-6));
  }

  @Test
  void a_dropped_scrap_leaves_the_blank_as_wide_as_the_graphic() {
    Region scrap = box(0, 0, 100, 100).union(box(150, 0, 154, 4));
    InlayPlan plan = mended(scrap, FixKind.DROP_SCRAPS);
    assertThat(plan.openingArea()).isCloseTo(10_000, within(1e-6));
    assertThat(plan.stencils().blank().width()).isEqualTo(254);
    assertThat(Words.english().say(plan.stencils().changes().get(0).said(UnitSystem.METRIC)))
        .isEqualTo("1 scrap under 18.0 mm² left out; 16.0 mm² less is dyed.");
  }

  @Test
  void a_dropped_loose_piece_is_dyed() {
    Region ring = box(0, 0, 100, 100).minus(box(45, 45, 55, 55));
    InlayPlan plan = mended(ring, FixKind.DROP_LOOSE);
    assertThat(plan.loosePieces()).isZero();
    assertThat(plan.openingArea()).isCloseTo(10_000, within(1e-6));
  }

  @Test
  void rounded_needles_are_said_no_more() {
    InlayPlan plan = mended(Region.of(Ring.of(0, 0, 200, -15, 200, 15)), FixKind.ROUND_NEEDLES);
    assertThat(plan.findings()).noneMatch(f -> f.fix().equals(Optional.of(FixKind.ROUND_NEEDLES)));
    assertThat(plan.stencils().changes()).hasSize(1);
  }

  @Test
  void a_hair_left_beside_a_rounded_needle_is_cut_off_too() {
    for (long seed : List.of(1363195933934491045L, 151065L)) {
      Region graphic = new RandomGraphic(seed, 700).region();
      assertThat(mended(graphic, FixKind.ROUND_NEEDLES).findings())
          .noneMatch(f -> f.fix().equals(Optional.of(FixKind.ROUND_NEEDLES)));
    }
  }

  @Test
  void a_fix_taken_back_leaves_the_graphic_as_it_was() {
    for (FixKind fix : FixKind.values()) {
      assertThat(FixAcceptance.withdraw(fix, FixAcceptance.accept(fix, SPEC))).isEqualTo(SPEC);
    }
  }

  @Test
  void seams_set_by_hand_are_kept() {
    HandSeams hand = new HandSeams(HandSeams.Strips.DOWN, List.of(Length.mm(700)));
    StencilSpec spec = SPEC.withChanges(SPEC.changes().withSeams(Optional.of(hand)));
    InlayPlan plan = plan(box(0, 0, 1500, 1500), spec);
    assertThat(plan.panels().orElseThrow().seams()).containsExactly(700.0);
  }

  @Property(tries = 6, shrinking = ShrinkingMode.OFF)
  void every_accepted_fix_leaves_nothing_to_mend_of_its_kind(@ForAll long seed) {
    Region graphic = new RandomGraphic(seed, 700).region();
    for (FixKind fix : FixKind.values()) {
      InlayPlan plan = mended(graphic, fix);
      assertThat(plan.findings())
          .as("%s of %d", fix, seed)
          .noneMatch(f -> f.fix().equals(Optional.of(fix)));
    }
  }

  /** The same of many more. */
  @Tag("long")
  @Property(tries = 200, shrinking = ShrinkingMode.OFF)
  void every_accepted_fix_leaves_nothing_to_mend_of_its_kind_of_200(@ForAll long seed) {
    every_accepted_fix_leaves_nothing_to_mend_of_its_kind(seed);
  }

  private static InlayPlan mended(Region graphic, FixKind fix) {
    return plan(graphic, FixAcceptance.accept(fix, SPEC));
  }

  private static InlayPlan plan(Region graphic, StencilSpec spec) {
    DyeLayer layer = new DyeLayer("#000000", 0, graphic);
    return InlayPlan.of(
        new DyedGraphic(graphic.bounds(), List.of(layer), List.of()),
        spec,
        InlayContext.graphicAlone());
  }
}
