package slabwright.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;

/** Offsets over bays against those along every side, and against distances. */
class OffsetBaysTest {
  /** So fine that where arcs begin does not show. */
  private static final double FINE = 0.002;

  /**
   * Corners of crossings lie on the grid, half a step aside and more where sides are nearly one.
   */
  private static final double GRID = 0.003;

  /** A ring whose sides are broken at their middles again and again, as long walls are. */
  private static Ring shore(RandomRings random, double radius, int sides) {
    List<Vec> points = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      double r = radius * (0.5 + 0.5 * random.fraction());
      points.add(Affine.turn(i * Math.PI / 3).apply(new Vec(r, 0)));
    }
    while (points.size() < sides) {
      List<Vec> finer = new ArrayList<>();
      for (int i = 0; i < points.size(); i++) {
        Vec a = points.get(i);
        Vec along = points.get((i + 1) % points.size()).minus(a);
        finer.add(a);
        finer.add(
            a.plus(along.times(0.5)).plus(along.left().times(0.5 * (random.fraction() - 0.5))));
      }
      points = finer;
    }
    return new Ring(points);
  }

  /** Every corner as far from the middle as it likes: needles and slots. */
  private static Ring needles(RandomRings random, double radius, int sides) {
    List<Vec> points = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      double r = radius * (0.6 + 0.4 * random.fraction());
      points.add(Affine.turn(2 * Math.PI * i / sides).apply(new Vec(r, 0)));
    }
    return new Ring(points);
  }

  private static Region region(Ring ring, RandomRings random) {
    Region hole = Region.of(shore(random, 20, 96)).map(Affine.move(15 * random.fraction(), 5));
    return Region.of(ring).minus(hole);
  }

  private static Region offset(Region region, UnaryOperator<Ring> curve) {
    return RingFill.positive(region.rings().stream().map(curve).toList());
  }

  private static Region overBays(Region region, double mm) {
    return offset(region, r -> OffsetCurve.of(r, mm, FINE, true));
  }

  private static void assertSame(Region region, double mm) {
    Region bays = overBays(region, mm);
    Region sides = offset(region, r -> OffsetCurve.of(r, mm, FINE, false));
    double off = bays.minusLarge(sides).area() + sides.minusLarge(bays).area();
    double length = bays.boundaryLength() + sides.boundaryLength();
    assertThat(bays.geometry().isValid()).isTrue();
    assertThat(off).as("offset %s", mm).isLessThanOrEqualTo((FINE + GRID) * (length + 1));
  }

  @Property(tries = 5)
  void an_offset_over_bays_is_the_one_along_every_side(@ForAll long seed) {
    RandomRings random = new RandomRings(seed);
    Region shore = region(shore(random, 100, 96 << (int) (3 * random.fraction())), random);
    double mm = 1 + 29 * random.fraction();
    assertSame(shore, mm);
    assertSame(shore, -mm);
    Region needles = region(needles(random, 100, 60 + (int) (200 * random.fraction())), random);
    assertSame(needles, mm);
    assertSame(needles, -mm);
  }

  /** The same of many more. */
  @Tag("long")
  @Property(tries = 300)
  void an_offset_over_bays_is_the_one_along_every_side_of_300(@ForAll long seed) {
    an_offset_over_bays_is_the_one_along_every_side(seed);
  }

  /** The boundary of a ring is asked for the nearest of its own corners and sides, one by one. */
  @Property(tries = 30)
  void every_sample_lies_where_its_distance_says(@ForAll long seed) {
    RandomRings random = new RandomRings(seed);
    Ring ring = shore(random, 100, 384);
    Region region = Region.of(ring);
    double mm = 60 * (random.fraction() - 0.5);
    Region moved = overBays(region, mm);
    for (int i = 0; i < 100; i++) {
      Vec p = random.point().times(2).minus(new Vec(100, 100));
      double depth = nearest(region, p) * (region.contains(p) ? -1 : 1);
      if (Math.abs(depth - mm) > FINE + 0.005) {
        assertThat(moved.contains(p)).as("depth %s, offset %s", depth, mm).isEqualTo(depth < mm);
      }
    }
  }

  private static double nearest(Region region, Vec p) {
    return region.rings().stream()
        .map(r -> new Line(r.points()).points())
        .flatMap(
            points ->
                IntStream.range(0, points.size())
                    .mapToObj(i -> toSide(p, points.get(i), points.get((i + 1) % points.size()))))
        .min(Comparator.naturalOrder())
        .orElseThrow();
  }

  private static double toSide(Vec p, Vec a, Vec b) {
    Vec along = b.minus(a);
    double t = p.minus(a).dot(along) / along.dot(along);
    return p.distanceTo(a.towards(b, Math.max(0, Math.min(1, t))));
  }

  /** Its mouth is 1 mm wide, its inside 100 mm, so that a disc of 10 mm has room in it. */
  @Example
  void a_wide_bay_behind_a_narrow_mouth_stays_open() {
    Region bottle =
        Region.of(Ring.rectangle(0, 0, 120, 120))
            .minus(Region.of(Ring.rectangle(10, 10, 110, 110)))
            .minus(Region.of(Ring.rectangle(60, 100, 61, 130)));
    assertThat(overBays(bottle, 10).contains(new Vec(60, 60))).isFalse();
    assertSame(bottle, 10);
  }

  @Example
  void of_a_rugged_hall_the_disc_touches_no_more_the_more_corners_it_has() {
    List<Integer> touched = new ArrayList<>();
    for (int sides : List.of(3072, 24_576)) {
      Ring hall = shore(new RandomRings(4), 20_000, sides);
      assertThat(OffsetBays.isRugged(hall, -700)).isTrue();
      touched.add(OffsetBays.of(hall.points(), -700).size());
    }
    assertThat(touched.get(1)).isLessThan(2 * touched.get(0)).isLessThan(3072);
  }

  @Example
  void a_rugged_hall_is_offset_over_bays_and_an_ordinary_one_along_its_sides() {
    Ring rugged = shore(new RandomRings(4), 20_000, 3072);
    assertThat(OffsetCurve.of(rugged, -700, 0.5))
        .isEqualTo(OffsetCurve.of(rugged, -700, 0.5, true))
        .isNotEqualTo(OffsetCurve.of(rugged, -700, 0.5, false));
    Ring ordinary = shore(new RandomRings(4), 20_000, 96);
    assertThat(OffsetCurve.of(ordinary, -700, 0.5))
        .isEqualTo(OffsetCurve.of(ordinary, -700, 0.5, false));
  }

  /** The part in the window has too few corners to count as rugged by itself. */
  @Example
  void a_part_of_a_rugged_hall_is_offset_as_the_whole_is() {
    Region hall = Region.of(shore(new RandomRings(4), 20_000, 3072));
    Vec corner = hall.shells().get(0).points().get(100);
    BoxArea window = BoxArea.of(List.of(Bounds.EMPTY.including(corner).grown(3000)));
    Region shown = hall.offset(-700, 0.5).intersect(window.region());
    Region inside = hall.offset(-700, 0.5, window);
    double off = shown.minus(inside).area() + inside.minus(shown).area();
    assertThat(shown.area()).isGreaterThan(1e6);
    assertThat(off).isLessThan(0.001 * (shown.boundaryLength() + inside.boundaryLength()));
  }
}
