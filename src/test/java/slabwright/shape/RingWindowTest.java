package slabwright.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class RingWindowTest {
  private static final Bounds WINDOW = new Bounds(-20, -15, 25, 30);

  /** A step of the grid, mm. */
  private static final double GRID = 1.0 / Jts.STEPS_PER_MM;

  private static List<Vec> points(long seed, int n) {
    Random random = new Random(seed);
    List<Vec> points = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      points.add(new Vec(120 * random.nextDouble() - 60, 120 * random.nextDouble() - 60));
    }
    return points;
  }

  @Property(tries = 200)
  void area_in_a_window_is_that_of_what_is_cut_out_with_it(@ForAll long seed) {
    Region region = Region.of(List.of(new Ring(points(seed, 9))), FillRule.EVEN_ODD);
    double cut = region.intersect(Region.rectangle(WINDOW)).area();
    assertThat(region.areaIn(WINDOW)).isCloseTo(cut, within(0.5));
  }

  /** Clipping puts ends on the grid, which moves them the farther the flatter a side is met. */
  @Property(tries = 200)
  void length_in_a_window_is_that_of_what_is_clipped_to_it(@ForAll long seed) {
    List<Vec> p = points(seed, 2);
    Vec along = p.get(1).minus(p.get(0));
    double flattest = along.length() / Math.min(Math.abs(along.x()), Math.abs(along.y()));
    double clipped =
        Region.rectangle(WINDOW).clip(new Line(p)).stream().mapToDouble(Line::length).sum();
    assertThat(RingWindow.length(p.get(0), p.get(1), WINDOW))
        .isCloseTo(clipped, within(2 * GRID * flattest));
  }

  @Test
  void a_piece_along_a_side_counts_and_one_beyond_it_does_not() {
    assertThat(RingWindow.length(new Vec(-20, 0), new Vec(-20, 9), WINDOW)).isEqualTo(9);
    assertThat(RingWindow.length(new Vec(-21, 0), new Vec(-21, 9), WINDOW)).isZero();
    assertThat(RingWindow.length(new Vec(-90, 40), new Vec(90, 40), WINDOW)).isZero();
  }

  @Property(tries = 200)
  void a_ring_drawn_straight_beyond_a_window_runs_round_its_places_as_often(@ForAll long seed) {
    List<Vec> ring = points(seed, 40);
    List<Integer> kept = RingWindow.corners(ring, WINDOW);
    List<Vec> drawn = kept.stream().map(ring::get).toList();
    Random random = new Random(seed);
    for (int i = 0; i < 20; i++) {
      Vec at = new Vec(-20 + 45 * random.nextDouble(), -15 + 45 * random.nextDouble());
      assertThat(winding(drawn, at)).isEqualTo(winding(ring, at));
    }
  }

  @Test
  void a_ring_far_round_a_window_keeps_few_corners_and_one_beside_it_next_to_none() {
    List<Vec> far = Arcs.circle(Vec.ZERO, 500, 0.01).points();
    List<Integer> kept = RingWindow.corners(far, WINDOW);
    assertThat(kept).hasSizeBetween(4, 12);
    assertThat(winding(kept.stream().map(far::get).toList(), Vec.ZERO)).isEqualTo(1);
    List<Vec> beside = Arcs.circle(new Vec(900, 0), 500, 0.01).points();
    assertThat(RingWindow.corners(beside, WINDOW)).hasSize(1);
  }

  /** How often a ring runs round a place, by the angles under which it is seen from there. */
  private static long winding(List<Vec> ring, Vec at) {
    double sum = 0;
    for (int i = 0; i < ring.size(); i++) {
      Vec p = ring.get(i).minus(at);
      Vec q = ring.get((i + 1) % ring.size()).minus(at);
      sum += Math.atan2(p.cross(q), p.dot(q));
    }
    return Math.round(sum / 2 / Math.PI);
  }
}
