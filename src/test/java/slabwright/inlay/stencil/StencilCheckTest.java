package slabwright.inlay.stencil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.inlay.Graphics.box;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.inlay.Graphics;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

class StencilCheckTest {
  private static final StencilLimits LIMITS = StencilLimits.forFilm(3);

  @Test
  void a_thin_bridge_of_mask_is_said_with_its_width_and_place() {
    Region twoBars = box(0, 0, 200, 100).union(box(0, 102, 200, 200));
    List<Finding> found = check(twoBars);
    assertThat(found).hasSize(1);
    assertThat(Words.english().say(found.get(0).message()))
        .isEqualTo("Mask 2 mm thin; the film holds 3 mm.");
    assertThat(found.get(0).at().orElseThrow().y()).isCloseTo(50.8 + 101, within(0.01));
  }

  @Test
  void a_narrow_slot_is_said() {
    assertThat(check(box(0, 0, 200, 2)))
        .extracting(f -> Words.english().say(f.message()))
        .containsExactly("Opening 2 mm narrow; the least that weeds clean is 3 mm.");
  }

  @Test
  void a_small_loose_piece_and_a_scrap_are_said() {
    Region small = box(0, 0, 100, 100).minus(box(45, 45, 55, 55)).union(box(150, 0, 154, 4));
    assertThat(check(small))
        .extracting(f -> Words.english().say(f.message()))
        .containsExactly(
            "Loose piece of 1.0 cm², so small that it may not hold on the tape.",
            "Scrap of an opening, 16.0 mm², hardly meant.");
  }

  @Test
  void a_needle_of_the_opening_is_said() {
    Region wedge = Region.of(Ring.of(0, 0, 200, -15, 200, 15));
    assertThat(check(wedge))
        .extracting(f -> Words.english().say(f.message()))
        .containsExactly(
            "Needle point of opening, 9° sharp: narrower than 3 mm for 20 mm from its tip.");
  }

  @Test
  void a_sound_stencil_has_nothing_to_say() {
    assertThat(check(Graphics.letterF(500))).isEmpty();
  }

  @Test
  void thickening_makes_the_bridge_as_wide_as_asked() {
    Region twoBars = box(0, 0, 200, 100).union(box(0, 102, 200, 200));
    Region fixed = StencilFixOp.thickenMask(twoBars, box(-50, -50, 250, 250).minus(twoBars), 3);
    Region mask = box(-50, -50, 250, 250).minus(fixed);
    assertThat(ThinPlaceFinder.in(mask, 2.99)).isEmpty();
    assertThat(twoBars.area() - fixed.area()).isBetween(150.0, 350.0);
  }

  @Test
  void dropping_scraps_leaves_the_rest_alone() {
    Region withScrap = box(0, 0, 100, 100).union(box(150, 0, 154, 4));
    assertThat(StencilFixOp.dropScraps(withScrap, 18)).isEqualTo(box(0, 0, 100, 100));
  }

  @Test
  void rounding_needles_leaves_square_corners_alone() {
    Region both = Region.of(Ring.of(0, 0, 200, -15, 200, 15)).union(box(300, 0, 400, 100));
    Region fixed = StencilFixOp.roundNeedles(both, 20, 2);
    assertThat(fixed.intersect(box(300, 0, 400, 100)).area()).isCloseTo(10_000, within(1e-6));
    assertThat(SharpCornerFinder.sharper(fixed, 20)).isEmpty();
    assertThat(fixed.bounds().minX()).isBetween(5.0, 40.0);
  }

  private static List<Finding> check(Region artwork) {
    return new StencilCheck(LIMITS, UnitSystem.METRIC).of(Graphics.one(artwork).stencils().get(0));
  }
}
