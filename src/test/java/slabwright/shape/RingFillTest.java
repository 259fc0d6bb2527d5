package slabwright.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Figures of the fill-rule property, SVG 2 chapter Painting; areas recomputed by hand. */
class RingFillTest {
  private static final Ring STAR = Ring.of(250, 75, 323, 301, 131, 161, 369, 161, 177, 301);

  /** The polygon star shown beside the fill-rule attribute on a public web reference. */
  private static final Ring OTHER_STAR = Ring.of(50, 0, 21, 90, 98, 35, 2, 35, 79, 90);

  @Test
  void nonzero_fills_the_middle_of_the_published_star() {
    assertThat(Region.of(STAR).area()).isCloseTo(17_523.2309, within(0.05));
  }

  @Test
  void even_odd_leaves_the_middle_of_the_published_star_empty() {
    assertThat(Region.of(List.of(STAR), FillRule.EVEN_ODD).area())
        .isCloseTo(12_108.4617, within(0.05));
  }

  @Test
  void the_shoelace_formula_counts_the_middle_of_the_star_twice() {
    assertThat(Math.abs(STAR.signedArea())).isCloseTo(22_938, within(1e-9));
  }

  @Test
  void the_other_star_fills_by_both_rules() {
    assertThat(Region.of(OTHER_STAR).area()).isCloseTo(2792.2983, within(0.02));
    assertThat(Region.of(List.of(OTHER_STAR), FillRule.EVEN_ODD).area())
        .isCloseTo(1929.5965, within(0.02));
  }

  @Test
  void circles_of_one_direction_are_solid_by_nonzero_and_a_ring_by_even_odd() {
    List<Ring> both = List.of(circle(107), circle(49));
    assertThat(Region.of(both, FillRule.NONZERO).area()).isCloseTo(35_968.0943, within(0.5));
    assertThat(Region.of(both, FillRule.EVEN_ODD).area()).isCloseTo(28_425.1303, within(0.5));
  }

  @Test
  void circles_of_opposite_directions_are_a_ring_by_both_rules() {
    List<Ring> both = List.of(circle(107), circle(49).reversed());
    assertThat(Region.of(both, FillRule.NONZERO).area()).isCloseTo(28_425.1303, within(0.5));
    assertThat(Region.of(both, FillRule.EVEN_ODD).area()).isCloseTo(28_425.1303, within(0.5));
  }

  @Test
  void a_ring_that_runs_there_and_back_encloses_nothing() {
    assertThat(Region.of(Ring.of(0, 0, 10, 5, 20, 10, 10, 5)).isEmpty()).isTrue();
  }

  @Test
  void one_point_two_points_and_no_point_enclose_nothing() {
    List<Ring> rings = List.of(Ring.of(), Ring.of(1, 1), Ring.of(1, 1, 2, 2), Ring.of(3, 3, 3, 3));
    assertThat(Region.of(rings, FillRule.NONZERO).isEmpty()).isTrue();
  }

  @Test
  void a_ring_drawn_twice_fills_by_nonzero_and_cancels_by_even_odd() {
    Ring square = Ring.rectangle(0, 0, 10, 10);
    assertThat(Region.of(List.of(square, square), FillRule.NONZERO).area()).isEqualTo(100);
    assertThat(Region.of(List.of(square, square), FillRule.EVEN_ODD).isEmpty()).isTrue();
  }

  @Test
  void a_bow_tie_has_two_parts_that_touch() {
    Region bow = Region.of(Ring.of(0, 0, 10, 10, 10, 0, 0, 10));
    assertThat(bow.area()).isEqualTo(50);
    assertThat(bow.parts()).hasSize(2);
    assertThat(bow.geometry().isValid()).isTrue();
  }

  @Test
  void a_hole_may_touch_the_shell_at_one_point() {
    Region r =
        Region.of(
            List.of(Ring.rectangle(0, 0, 10, 10), Ring.of(0, 5, 5, 7, 5, 3)), FillRule.EVEN_ODD);
    assertThat(r.area()).isEqualTo(90);
    assertThat(r.holes()).hasSize(1);
    assertThat(r.geometry().isValid()).isTrue();
  }

  @Test
  void seams_between_rings_that_abut_vanish() {
    Region r =
        Region.of(
            List.of(Ring.rectangle(0, 0, 10, 10), Ring.rectangle(10, 0, 20, 10)), FillRule.NONZERO);
    assertThat(r.rings()).singleElement().extracting(x -> x.points().size()).isEqualTo(4);
  }

  @Test
  void a_ring_of_blocks_that_touch_at_corners_holds_a_hole() {
    List<Ring> blocks = new ArrayList<>();
    for (int[] at : new int[][] {{1, 0}, {0, 1}, {2, 1}, {1, 2}}) {
      blocks.add(Ring.rectangle(at[0], at[1], at[0] + 1, at[1] + 1));
    }
    Region r = Region.of(blocks, FillRule.NONZERO);
    assertThat(r.area()).isEqualTo(4);
    assertThat(r.parts()).hasSize(4);
    assertThat(r.geometry().isValid()).isTrue();
  }

  @Test
  void one_noding_of_both_gives_the_same_as_the_overlay_of_two_regions() {
    RandomRings random = new RandomRings(15);
    for (int i = 0; i < 300; i++) {
      Region a = Region.of(random.some(5), random.rule());
      Region b = Region.of(random.some(5), random.rule());
      double near = 0.002 * (a.boundaryLength() + b.boundaryLength());

      assertThat(a.minusLarge(b).area()).isCloseTo(a.minus(b).area(), within(near));
      assertThat(a.minusLarge(b).minus(a.minus(b)).area()).isLessThan(near);
      assertThat(a.unionLarge(b).area()).isCloseTo(a.union(b).area(), within(near));
      assertThat(a.union(b).minus(a.unionLarge(b)).area()).isLessThan(near);
      assertThat(a.intersectLarge(b).area()).isCloseTo(a.intersect(b).area(), within(near));
      assertThat(a.intersectLarge(b).minus(a.intersect(b)).area()).isLessThan(near);
    }
  }

  @Test
  void what_lies_within_a_box_is_the_overlay_with_it() {
    RandomRings random = new RandomRings(16);
    Random of = new Random(16);
    for (int i = 0; i < 300; i++) {
      Region a = Region.of(random.some(5), random.rule()).union(square());
      Bounds b = a.bounds();
      double x = b.minX() + b.width() * (of.nextDouble() - 0.2);
      double y = b.minY() + b.height() * (of.nextDouble() - 0.2);
      Bounds box =
          new Bounds(
              Math.rint(x), Math.rint(y), Math.rint(x + b.width()), Math.rint(y + b.height()));
      assertThat(a.within(box)).isEqualTo(a.intersect(Region.rectangle(box)));
      assertThat(a.within(b.grown(1))).isEqualTo(a);
    }
  }

  private static Region square() {
    return Region.rectangle(new Bounds(-40, -40, -30, -30));
  }

  private static Ring circle(double radius) {
    List<Vec> points = new ArrayList<>();
    for (int i = 0; i < 2000; i++) {
      double t = 2 * Math.PI * i / 2000;
      points.add(new Vec(600 + radius * Math.cos(t), 188 + radius * Math.sin(t)));
    }
    return new Ring(points);
  }
}
