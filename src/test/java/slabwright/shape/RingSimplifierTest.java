package slabwright.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class RingSimplifierTest {
  @Property(tries = 200)
  void no_corner_lies_far_from_the_new_outline(@ForAll long seed) {
    Ring ring = new RandomRings(seed).any();
    List<Vec> coarse = RingSimplifier.simplify(ring, 5).points();
    assertThat(ring.points()).containsAll(coarse);
    for (Vec p : ring.points()) {
      double off = Double.POSITIVE_INFINITY;
      for (int i = 0; i < coarse.size(); i++) {
        Vec on = SegmentGeometry.nearest(coarse.get(i), coarse.get((i + 1) % coarse.size()), p);
        off = Math.min(off, on.distanceTo(p));
      }
      assertThat(off).isLessThanOrEqualTo(10);
    }
  }

  @Example
  void a_flattened_circle_keeps_few_corners_and_its_area() {
    Ring circle = Arcs.circle(Vec.ZERO, 100, 0.001);
    Ring coarse = RingSimplifier.simplify(circle, 0.05);
    assertThat(coarse.points().size()).isLessThan(circle.points().size() / 4);
    assertThat(coarse.signedArea())
        .isCloseTo(circle.signedArea(), within(0.05 * 2 * Math.PI * 100));
  }

  @Example
  void a_square_started_in_the_middle_of_a_side_keeps_its_four_corners() {
    Ring square =
        new Ring(
            List.of(new Vec(5, 0), new Vec(10, 0), new Vec(10, 10), new Vec(0, 10), new Vec(0, 0)));
    assertThat(RingSimplifier.simplify(square, 0.1).points())
        .containsExactlyInAnyOrder(new Vec(10, 0), new Vec(10, 10), new Vec(0, 10), new Vec(0, 0));
  }

  @Example
  void a_corner_on_the_way_of_a_triangle_s_side_is_left_out_and_no_triangle_loses_one() {
    Ring four = Ring.of(0, 0, 50, 0.01, 100, 0, 50, 80);
    assertThat(RingSimplifier.simplify(four, 0.1).points()).hasSize(3);
    assertThat(RingSimplifier.simplify(four, 0.001).points()).hasSize(4);
    Ring thin = Ring.of(0, 0, 100, 0, 50, 0.05);
    assertThat(RingSimplifier.simplify(thin, 0.1)).isSameAs(thin);
  }
}
