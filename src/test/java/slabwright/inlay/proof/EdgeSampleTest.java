package slabwright.inlay.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** Points along a square of 10, its way round worked out by hand: 0 to 40. */
class EdgeSampleTest {
  private static final Ring SQUARE = Ring.rectangle(0, 0, 10, 10);

  private static double way(Vec p) {
    Vec start = SQUARE.points().get(0);
    assertThat(start.distanceTo(Vec.ZERO)).isZero();
    if (p.y() == 0) {
      return p.x();
    }
    if (p.x() == 10) {
      return 10 + p.y();
    }
    return p.y() == 10 ? 30 - p.x() : 40 - p.y();
  }

  private static double[] ways(List<EdgeSample> samples) {
    return samples.stream().mapToDouble(s -> way(s.at())).toArray();
  }

  @Test
  void dense_ones_are_every_corner_and_points_no_farther_apart_than_was_asked() {
    List<EdgeSample> samples = EdgeSample.dense(List.of(SQUARE), 5);
    assertThat(ways(samples)).containsExactly(0, 5, 10, 15, 20, 25, 30, 35);
    assertThat(EdgeSample.dense(List.of(SQUARE), 4.9)).hasSize(12);
    assertThat(EdgeSample.dense(List.of(SQUARE), 50)).hasSize(4);
  }

  @Test
  void spaced_ones_are_a_step_apart_over_corners_and_from_ring_to_ring() {
    List<EdgeSample> samples = EdgeSample.spaced(List.of(SQUARE, SQUARE), 6);
    assertThat(ways(samples.subList(0, 7))).containsExactly(3, 9, 15, 21, 27, 33, 39);
    assertThat(ways(samples.subList(7, samples.size()))).containsExactly(5, 11, 17, 23, 29, 35);
    assertThat(samples).extracting(EdgeSample::ring).startsWith(0, 0).endsWith(1, 1);
  }

  @Test
  void a_point_that_falls_on_a_corner_is_the_end_of_the_side_before() {
    List<EdgeSample> samples = EdgeSample.spaced(List.of(SQUARE), 4);
    assertThat(ways(samples)).containsExactly(2, 6, 10, 14, 18, 22, 26, 30, 34, 38);
    assertThat(samples.get(2).along().distanceTo(new Vec(1, 0))).isLessThan(1e-12);
  }

  /** The square runs with its inside on the left, from x to y. */
  @Test
  void outward_is_away_from_what_is_open() {
    for (EdgeSample s : EdgeSample.spaced(List.of(SQUARE), 4)) {
      Vec beyond = s.at().plus(s.outward());
      double away = Math.max(Math.abs(beyond.x() - 5), Math.abs(beyond.y() - 5));
      assertThat(away).isCloseTo(6, within(1e-12));
    }
    assertThat(EdgeSample.dense(List.of(SQUARE), 4)).allMatch(s -> s.outward().length() > 0.99);
  }
}
