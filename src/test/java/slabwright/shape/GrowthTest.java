package slabwright.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;

class GrowthTest {
  private static final double TOLERANCE = 0.5;

  /** A wheel of spikes and bays of every depth. */
  private static Region rugged(RandomRings random, int corners) {
    List<Vec> points = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double a = 2 * Math.PI * i / corners;
      double r = random.fraction() < 0.2 ? 60 + 40 * random.fraction() : 90 + 4 * random.fraction();
      points.add(new Vec(Math.cos(a), Math.sin(a)).times(r));
    }
    return Region.of(new Ring(points));
  }

  private static void assertWithin(Region grown, Region region, double mm) {
    Region least = region.offset(mm - TOLERANCE, 0.05);
    Region most = region.offset(mm + TOLERANCE, 0.05);
    assertThat(least.minus(grown).area()).as("left out").isLessThan(1e-6);
    assertThat(grown.minus(most).area()).as("too much").isLessThan(1e-6);
  }

  @Property(tries = 12)
  void what_is_grown_lies_within_the_tolerance_of_what_is_offset(@ForAll long seed) {
    RandomRings random = new RandomRings(seed);
    Region region = rugged(random, 400);
    assertWithin(region.grown(30, TOLERANCE), region, 30);
  }

  /** The same of many more. */
  @Tag("long")
  @Property(tries = 200)
  void what_is_grown_lies_within_the_tolerance_of_what_is_offset_of_200(@ForAll long seed) {
    what_is_grown_lies_within_the_tolerance_of_what_is_offset(seed);
  }

  @Property(tries = 12)
  void so_it_is_with_holes_and_parts_apart(@ForAll long seed) {
    RandomRings random = new RandomRings(seed);
    Region region = Region.of(random.some(6), FillRule.EVEN_ODD);
    assertWithin(region.grown(9, TOLERANCE), region, 9);
    assertWithin(region.grown(60, TOLERANCE), region, 60);
  }

  /** The same of many more. */
  @Tag("long")
  @Property(tries = 200)
  void so_it_is_with_holes_and_parts_apart_of_200(@ForAll long seed) {
    so_it_is_with_holes_and_parts_apart(seed);
  }

  /** A bottle: its mouth is 1 mm wide, its inside 100 mm, so a disc of 10 mm has room in it. */
  @Example
  void a_wide_bay_behind_a_narrow_mouth_stays_open() {
    Region bottle =
        Region.of(Ring.rectangle(0, 0, 120, 120))
            .minus(Region.of(Ring.rectangle(10, 10, 110, 110)))
            .minus(Region.of(Ring.rectangle(60, 100, 61, 130)));
    Region grown = bottle.grown(10, TOLERANCE);
    assertThat(grown.contains(new Vec(60, 60))).isFalse();
    assertWithin(grown, bottle, 10);
  }

  @Example
  void nothing_grows_to_nothing() {
    assertThat(Region.empty().grown(10, TOLERANCE).isEmpty()).isTrue();
  }

  private static Region dots(int across, double apart, double radius) {
    List<Ring> rings = new ArrayList<>();
    for (int i = 0; i < across * across; i++) {
      double row = Math.floor((double) i / across);
      rings.add(Arcs.circle(new Vec(i % across * apart, row * apart), radius, 0.05));
    }
    return Region.of(rings, FillRule.NONZERO);
  }

  @Property(tries = 6)
  void so_it_is_with_many_dots_of_which_most_are_hidden_by_others(@ForAll long seed) {
    RandomRings random = new RandomRings(seed);
    List<Ring> dots = new ArrayList<>();
    for (int i = 0; i < 200; i++) {
      double x = 200 * random.fraction();
      double y = 150 * random.fraction();
      dots.add(Ring.rectangle(x, y, x + 1 + 6 * random.fraction(), y + 2));
    }
    Region region =
        Region.of(dots, FillRule.NONZERO).minus(Region.of(Ring.rectangle(40, 40, 90, 110)));
    assertWithin(region.grown(16, TOLERANCE), region, 16);
    assertWithin(region.grown(100, TOLERANCE), region, 100);
  }

  /** Of 40 × 40 dots that each reach twenty rows of others, some rows along the rim are seen. */
  @Example
  void of_dots_that_lie_close_only_those_along_the_rim_are_grown() {
    Region dots = dots(40, 6, 1);
    assertThat(dots.parts()).hasSize(1600);
    assertThat(GrownCells.of(dots, 60, 0.1).toGrow().size()).isBetween(150, 800);
    assertThat(GrownCells.of(dots, 2, 0.1).asTheyAre()).as("apart").isEmpty();
  }
}
