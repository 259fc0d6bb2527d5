package slabwright.inlay.stencil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;

/** Discs that touch the x axis from above at the origin and go on to touch a side. */
class InscribedDiscTest {
  private static final Vec P = new Vec(0, 0);
  private static final Vec UP = new Vec(0, 1);

  private static InscribedDisc touching(Vec a, Vec b, InscribedDisc least, double under) {
    return InscribedDisc.touching(P, UP, BoundarySegment.of(a, b), least, under);
  }

  private static InscribedDisc touching(double ax, double ay, double bx, double by) {
    return touching(new Vec(ax, ay), new Vec(bx, by), null, 1_000);
  }

  private static void is(InscribedDisc disc, double radius, double x, double y) {
    assertThat(disc.radius()).isCloseTo(radius, within(1e-9));
    assertThat(disc.centre().distanceTo(new Vec(0, radius))).isLessThan(1e-9);
    assertThat(disc.other().distanceTo(new Vec(x, y))).isLessThan(1e-9);
  }

  @Test
  void a_side_straight_across_halves_the_way_whichever_way_it_runs() {
    is(touching(5, 8, -5, 8), 4, 0, 8);
    is(touching(-5, 8, 5, 8), 4, 0, 8);
    assertThat(touching(5, 8, -5, 8).facing()).isCloseTo(-1, within(1e-9));
  }

  /** A wedge of 90°: the wall x = 3 is touched by the disc of radius 3. */
  @Test
  void an_upright_side_is_touched_as_high_as_it_is_away() {
    is(touching(3, 0, 3, 10), 3, 3, 3);
    assertThat(touching(3, 0, 3, 10).facing()).isCloseTo(0, within(1e-9));
  }

  /** Through (0, 0) and (3, 1), with its middle over the origin: r = (9 + 1) / 2. */
  @Test
  void where_the_side_ends_before_its_end_is_touched() {
    is(touching(3, 0, 3, 1), 5, 3, 1);
    is(touching(3, 1, 3, -2), 5, 3, 1);
    is(touching(3, -2, 3, 1), 5, 3, 1);
  }

  @Test
  void what_lies_behind_or_on_the_point_s_own_side_is_never_touched() {
    assertThat(touching(-5, -1, 5, -1)).isNull();
    assertThat(touching(1, 0, 5, 0)).isNull();
  }

  @Test
  void the_disc_found_before_stays_unless_a_smaller_one_touches() {
    InscribedDisc found = new InscribedDisc(P, new Vec(0, 4.5), 4.5, new Vec(0, 9));
    assertThat(touching(new Vec(3, 0), new Vec(3, 1), found, 1_000)).isSameAs(found);
    assertThat(touching(new Vec(-5, -1), new Vec(5, -1), found, 1_000)).isSameAs(found);
    assertThat(touching(new Vec(1, 0), new Vec(5, 0), found, 1_000)).isSameAs(found);
    assertThat(touching(new Vec(5, 8), new Vec(-5, 8), found, 1_000).radius()).isEqualTo(4);
  }

  @Test
  void a_disc_as_large_as_does_not_matter_is_not_told() {
    assertThat(touching(new Vec(5, 8), new Vec(-5, 8), null, 4)).isNull();
    assertThat(touching(new Vec(5, 8), new Vec(-5, 8), null, 4.001)).isNotNull();
  }

  @Test
  void of_two_discs_the_smaller_one_is_taken_and_of_none_the_other() {
    InscribedDisc small = new InscribedDisc(P, new Vec(0, 2), 2, new Vec(0, 4));
    InscribedDisc large = new InscribedDisc(P, new Vec(0, 3), 3, new Vec(0, 6));
    assertThat(InscribedDisc.smaller(small, large)).isSameAs(small);
    assertThat(InscribedDisc.smaller(large, small)).isSameAs(small);
    assertThat(InscribedDisc.smaller(null, large)).isSameAs(large);
    assertThat(InscribedDisc.smaller(small, null)).isSameAs(small);
    assertThat(InscribedDisc.smaller(null, null)).isNull();
  }
}
