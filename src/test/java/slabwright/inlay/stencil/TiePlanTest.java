package slabwright.inlay.stencil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.inlay.Graphics.box;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import slabwright.inlay.Graphics;
import slabwright.inlay.RandomGraphic;
import slabwright.shape.Arcs;
import slabwright.shape.Region;
import slabwright.shape.Vec;

class TiePlanTest {
  @Test
  void a_ring_gets_two_ties_straight_across_and_no_loose_piece_is_left() {
    StencilSet ring = Graphics.one(Graphics.squareRing());
    TiePlan ties = TiePlan.in(ring, 10);
    assertThat(ties.ties()).hasSize(2);
    assertThat(ties.ties()).allMatch(t -> Math.abs(t.length() - 100) < 1e-6);
    assertThat(ties.set().looseCount()).isZero();
    assertThat(ties.touchUpArea()).isBetween(1999.0, 2060.0);
    assertThat(angle(ties, new Vec(250.8, 250.8))).isGreaterThanOrEqualTo(Math.PI / 2 - 1e-9);
  }

  @Test
  void ties_go_where_the_opening_is_narrowest() {
    Region lopsided = box(0, 0, 400, 400).minus(box(20, 20, 300, 300));
    List<Tie> ties = TiePlan.in(Graphics.one(lopsided), 10).ties();
    assertThat(ties).allMatch(t -> t.length() <= 20 + 1e-6);
  }

  @Test
  void where_all_ways_are_equal_the_ties_still_stand_apart() {
    Region disc = Region.of(Arcs.circle(new Vec(200, 200), 50, 0.05));
    Region around = Region.of(Arcs.circle(new Vec(200, 200), 150, 0.05));
    TiePlan ties = TiePlan.in(Graphics.one(around.minus(disc)), 8);
    assertThat(angle(ties, new Vec(200.8, 200.8))).isGreaterThanOrEqualTo(Math.PI / 2 - 1e-9);
  }

  @Test
  void nested_rings_are_all_joined_to_the_surround() {
    Region target =
        Graphics.squareRing().union(box(130, 130, 270, 270).minus(box(170, 170, 230, 230)));
    TiePlan ties = TiePlan.in(Graphics.one(target), 10);
    assertThat(ties.ties()).hasSize(4);
    assertThat(ties.set().looseCount()).isZero();
  }

  @Test
  void two_pieces_that_hold_only_each_other_get_a_way_out() {
    Region wide = box(0, 0, 1000, 600);
    Region pair = box(420, 250, 495, 350).union(box(505, 250, 580, 350));
    TiePlan ties = TiePlan.in(Graphics.one(wide.minus(pair)), 6);
    assertThat(ties.set().looseCount()).isZero();
  }

  @Test
  void a_stencil_without_loose_pieces_is_left_as_it_is() {
    StencilSet letter = Graphics.one(Graphics.letterF(300));
    TiePlan ties = TiePlan.in(letter, 10);
    assertThat(ties.ties()).isEmpty();
    assertThat(ties.set().stencils()).isEqualTo(letter.stencils());
  }

  @Property(tries = 6, shrinking = ShrinkingMode.OFF)
  void no_loose_piece_is_left_in_any_graphic(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    StencilSet set = Graphics.one(new RandomGraphic(seed, 1000).region());
    TiePlan ties = TiePlan.in(set, 6);
    assertThat(ties.set().looseCount()).isZero();
    Stencil before = set.stencils().get(0);
    Stencil after = ties.set().stencils().get(0);
    assertThat(after.openings().minus(before.openings()).area()).isLessThan(0.5);
    assertThat(after.touchUpArea())
        .isCloseTo(before.openings().area() - after.openings().area(), within(1e-6));
  }

  /** The same of many more. */
  @Tag("long")
  @Property(tries = 200, shrinking = ShrinkingMode.OFF)
  void no_loose_piece_is_left_in_any_graphic_of_200(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    no_loose_piece_is_left_in_any_graphic(seed);
  }

  private static double angle(TiePlan ties, Vec centroid) {
    double a = ties.ties().get(0).from().minus(centroid).angle();
    double b = ties.ties().get(1).from().minus(centroid).angle();
    double d = Math.abs(a - b);
    return Math.min(d, 2 * Math.PI - d);
  }
}
