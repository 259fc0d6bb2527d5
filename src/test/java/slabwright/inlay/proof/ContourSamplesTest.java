package slabwright.inlay.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/** Points on a square of 10 about the frame's zero, found by place. */
class ContourSamplesTest {
  private static final Ring SQUARE = Ring.rectangle(-5, -5, 5, 5);

  /** Half a step from the corners, so at odd halves of a millimetre. */
  private static final ContourSamples SAMPLES = new ContourSamples(List.of(SQUARE), 1, 3);

  private static List<Vec> all() {
    List<Vec> all = new ArrayList<>();
    for (double t = -4.5; t < 5; t++) {
      all.addAll(List.of(new Vec(t, -5), new Vec(t, 5), new Vec(-5, t), new Vec(5, t)));
    }
    return all;
  }

  @Test
  void the_nearest_point_is_found_wherever_one_asks_from() {
    for (double x = -8; x <= 8; x += 0.73) {
      for (double y = -8; y <= 8; y += 0.61) {
        Vec p = new Vec(x, y);
        double nearest = all().stream().mapToDouble(p::distanceTo).min().orElseThrow();
        List<Double> found = SAMPLES.nearest(p, 3).map(s -> s.at().distanceTo(p)).stream().toList();
        if (nearest > 3) {
          assertThat(found).as("from %s", p).isEmpty();
        } else {
          assertThat(found.get(0)).as("from %s", p).isCloseTo(nearest, within(1e-12));
        }
      }
    }
  }

  @Test
  void one_just_as_far_as_is_asked_counts_and_a_farther_one_does_not() {
    assertThat(SAMPLES.nearest(new Vec(0.5, 7), 2)).isPresent();
    assertThat(SAMPLES.nearest(new Vec(0.5, 7.001), 2)).isEmpty();
  }

  @Test
  void each_knows_the_direction_across_its_side() {
    assertThat(SAMPLES.nearest(new Vec(0.5, 6), 3).orElseThrow().normal().y())
        .isCloseTo(-1, within(1e-12));
    assertThat(SAMPLES.nearest(new Vec(-6, 0.5), 3).orElseThrow().normal().x())
        .isCloseTo(1, within(1e-12));
  }

  @Test
  void two_corners_in_one_place_make_no_point_and_do_no_harm() {
    Ring twice = Ring.of(-5, -5, 5, -5, 5, -5, 5, 5, -5, 5);
    ContourSamples samples = new ContourSamples(List.of(twice), 1, 3);
    assertThat(samples.nearest(new Vec(5, -5), 0.4)).isEmpty();
    assertThat(samples.nearest(new Vec(5, -5), 0.51)).isPresent();
  }

  @Test
  void along_rings_they_are_a_step_apart_over_corners_and_from_ring_to_ring() {
    List<Vec> along = ContourSamples.along(List.of(SQUARE, SQUARE), 7);
    assertThat(along)
        .containsExactly(
            new Vec(2, -5),
            new Vec(5, -1),
            new Vec(4, 5),
            new Vec(-3, 5),
            new Vec(-5, 0),
            new Vec(-3, -5),
            new Vec(4, -5),
            new Vec(5, 1),
            new Vec(2, 5),
            new Vec(-5, 5),
            new Vec(-5, -2));
  }
}
