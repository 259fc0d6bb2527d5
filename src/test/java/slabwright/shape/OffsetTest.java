package slabwright.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class OffsetTest {
  private static final double TOLERANCE = 0.05;

  /** Steiner's formula A + P r + pi r² for convex shapes; 10 x 10, r 1 gives 143.141593. */
  @Test
  void a_square_grows_as_steiner_says() {
    Region grown = Region.of(Ring.rectangle(0, 0, 10, 10)).offset(1, 1e-4);
    assertThat(grown.area()).isCloseTo(143.141593, within(0.005));
    assertThat(grown.boundaryLength()).isCloseTo(46.283185, within(0.005));
  }

  @Test
  void a_rectangle_grows_as_steiner_says() {
    Region grown = Region.of(Ring.rectangle(0, 0, 12, 20)).offset(0.5, 1e-4);
    assertThat(grown.area()).isCloseTo(272.785398, within(0.005));
    assertThat(grown.boundaryLength()).isCloseTo(67.141593, within(0.005));
  }

  @Test
  void a_square_shrinks_to_a_smaller_square() {
    Region shrunk = Region.of(Ring.rectangle(0, 0, 10, 10)).offset(-2, TOLERANCE);
    assertThat(shrunk).isEqualTo(Region.of(Ring.rectangle(2, 2, 8, 8)));
  }

  @Test
  void a_region_narrower_than_twice_the_distance_vanishes() {
    assertThat(Region.of(Ring.rectangle(0, 0, 10, 100)).offset(-5.1, TOLERANCE).isEmpty()).isTrue();
  }

  @Test
  void an_hourglass_falls_apart_at_its_waist() {
    Ring hourglass = Ring.of(0, 0, 100, 0, 55, 100, 100, 200, 0, 200, 45, 100);
    assertThat(Region.of(hourglass).offset(-6, TOLERANCE).parts()).hasSize(2);
  }

  @Test
  void a_hole_closes_when_it_is_no_wider_than_twice_the_distance() {
    List<Ring> frame = List.of(Ring.rectangle(0, 0, 100, 100), Ring.rectangle(40, 40, 59, 59));
    Region grown = Region.of(frame, FillRule.EVEN_ODD).offset(10, TOLERANCE);
    assertThat(grown.holes()).isEmpty();
  }

  @Test
  void an_opened_square_keeps_everything_but_its_corners() {
    Region opened = Region.of(Ring.rectangle(0, 0, 100, 100)).opened(10, 1e-3);
    assertThat(opened.area()).isCloseTo(10_000 - (4 - Math.PI) * 100, within(0.1));
  }

  @Test
  void a_line_with_round_ends_covers_a_stadium() {
    Region around = Region.around(Line.of(Vec.ZERO, new Vec(100, 0)), 10, true, 1e-3);
    assertThat(around.area()).isCloseTo(2000 + Math.PI * 100, within(0.1));
  }

  @Test
  void a_line_with_flat_ends_covers_a_rectangle() {
    Region around = Region.around(Line.of(Vec.ZERO, new Vec(30, 40)), 10, false, 1e-3);
    assertThat(around.area()).isCloseTo(1000, within(0.1));
  }

  @Test
  void a_bent_line_covers_both_legs_once() {
    Line bent = Line.of(Vec.ZERO, new Vec(100, 0), new Vec(100, 100));
    Region around = Region.around(bent, 10, false, 1e-3);
    assertThat(around.area()).isCloseTo(4000 - 100 + Math.PI * 100 / 4, within(0.1));
  }

  @Test
  void a_closed_line_leaves_its_middle_free() {
    Line closed = Line.of(Vec.ZERO, new Vec(100, 0), new Vec(100, 100), new Vec(0, 100), Vec.ZERO);
    Region around = Region.around(closed, 10, true, 1e-3);
    assertThat(around.holes()).hasSize(1);
    assertThat(around.area())
        .isCloseTo(100 * 100 + 4 * 1000 + Math.PI * 100 - 80 * 80, within(0.1));
  }

  @Property(tries = 200)
  void every_sample_lies_where_its_distance_says(@ForAll long seed) {
    RandomRings random = new RandomRings(seed);
    Region region = Region.of(random.some(3), random.rule());
    double mm = 12 * (random.fraction() - 0.5);
    Region moved = region.offset(mm, TOLERANCE);
    assertThat(moved.geometry().isValid()).isTrue();
    for (int i = 0; i < 60 && !region.isEmpty(); i++) {
      Vec p = random.point();
      double depth = p.distanceTo(region.nearestOnBoundary(p)) * (region.contains(p) ? -1 : 1);
      if (Math.abs(depth - mm) > TOLERANCE + 0.005) {
        assertThat(moved.contains(p)).as("depth %s, offset %s", depth, mm).isEqualTo(depth < mm);
      }
    }
  }

  @Property(tries = 200)
  void opening_reaches_no_more_with_a_larger_disc(@ForAll long seed) {
    RandomRings random = new RandomRings(seed);
    Region region = Region.of(random.some(3), random.rule());
    double radius = 1 + 6 * random.fraction();
    Region small = region.opened(radius, TOLERANCE);
    Region large = region.opened(radius + 3 * random.fraction(), TOLERANCE);
    double allowed = 2 * TOLERANCE * (region.boundaryLength() + 1);
    assertThat(large.minus(small).area()).isLessThanOrEqualTo(allowed);
    assertThat(small.minus(region).area()).isLessThanOrEqualTo(allowed);
  }

  /** Once the long side ran from its far end straight to the corner after, 0.014 mm off. */
  @Test
  void a_small_corner_at_the_end_of_a_long_side_does_not_turn_the_side() {
    Region hall =
        Region.of(
            new Ring(
                List.of(
                    new Vec(0, 0),
                    new Vec(20_000, 0),
                    new Vec(20_000, 10_000),
                    new Vec(10_000, 10_000),
                    new Vec(9_999.65, 10_000.014),
                    new Vec(9_000, 12_000),
                    new Vec(0, 12_000))));
    Bounds beyond = new Bounds(11_000, 10_350, 19_000, 10_400);
    assertThat(hall.offset(350, 0.5).areaIn(beyond)).isLessThan(0.0005 * 8_000);
  }

  /** A jagged ring's curve crosses itself and the window's sides; corners and all. */
  @Property(tries = 200)
  void an_offset_inside_a_window_is_what_the_window_shows_of_it(@ForAll long seed) {
    Random random = new Random(seed);
    List<Vec> points = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      double far = 600 + 250 * random.nextDouble();
      points.add(Affine.turn(2 * Math.PI * i / 60).apply(new Vec(far, 0)));
    }
    Region region = Region.of(new Ring(points));
    double mm = 80 * random.nextDouble() - 40;
    BoxArea window =
        BoxArea.of(List.of(new Bounds(300, -200, 650, 500), new Bounds(400, -400, 900, 100)));
    Region shown = region.offset(mm, TOLERANCE).intersect(window.region());
    Region inside = region.offset(mm, TOLERANCE, window);
    double off = shown.minus(inside).area() + inside.minus(shown).area();
    assertThat(off).isLessThan(0.001 * (shown.boundaryLength() + inside.boundaryLength()));
  }

  @Test
  void an_offset_is_nothing_in_a_window_beside_it_and_all_of_one_inside_it() {
    Region square = Region.of(Ring.rectangle(0, 0, 100, 100));
    BoxArea beside = BoxArea.of(List.of(new Bounds(111, 0, 150, 50)));
    assertThat(square.offset(10, TOLERANCE, beside).isEmpty()).isTrue();
    BoxArea inside = BoxArea.of(List.of(new Bounds(20, 20, 80, 70)));
    assertThat(square.offset(-10, TOLERANCE, inside)).isEqualTo(inside.region());
  }

  private static final Line POINT = new Line(List.of(new Vec(3, 4), new Vec(3, 4)));

  @Test
  void a_line_without_length_is_a_disc_with_round_ends_and_nothing_with_square_ones() {
    Region disc = Region.around(POINT, 10, true, 0.001);
    assertThat(disc.area()).isCloseTo(Math.PI * 100, within(0.1));
    assertThat(disc.bounds().middle().distanceTo(new Vec(3, 4))).isLessThan(0.01);
    assertThat(Region.around(POINT, 10, false, 0.001).isEmpty()).isTrue();
    assertThat(Region.around(new Line(List.of()), 10, true, 0.001).isEmpty()).isTrue();
  }

  /** 100 by 20 and, with round ends, a disc of radius 10 besides. */
  @Test
  void a_line_is_a_strip_with_or_without_half_a_disc_at_either_end() {
    Line line = Line.of(new Vec(0, 0), new Vec(100, 0));
    assertThat(Region.around(line, 10, false, 0.001).area()).isCloseTo(2_000, within(0.1));
    assertThat(Region.around(line, 10, true, 0.001).area())
        .isCloseTo(2_000 + Math.PI * 100, within(0.2));
  }
}
